package squaresheet.binding;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** The room's own data files. */
final class Resource {

  private Resource() {}

  static List<NamedCsvRecord> lines(String name) {
    try (CsvReader<NamedCsvRecord> lines = CsvReader.builder()
        .commentStrategy(CommentStrategy.SKIP)
        .ofNamedCsvRecord(new InputStreamReader(
            Objects.requireNonNull(Resource.class.getResourceAsStream(name), name),
            StandardCharsets.UTF_8))) {
      return lines.stream().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The parts of a field that lists several. */
  static List<String> parts(String field) {
    return Arrays.stream(field.split(";"))
        .map(String::strip)
        .filter(p -> !p.isEmpty())
        .toList();
  }
}
