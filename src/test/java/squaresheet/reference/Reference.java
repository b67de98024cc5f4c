package squaresheet.reference;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tables of published values, each row with its id and its source. */
public final class Reference {

  private static final Pattern NUMBER = Pattern.compile("\\d+(?:,\\d{3})*(?:\\.\\d+)?");

  private Reference() {}

  /**
   * A published value.
   *
   * @param published as printed
   * @param computed the exact result behind it, or empty where the value is a rule
   * @param check how the two agree
   */
  public record Row(
      String id,
      String quantity,
      String inputs,
      String published,
      String unit,
      String computed,
      String check,
      String source,
      String notes) {

    /** The number it must come to: the exact one, or the printed one where the value is a rule. */
    public double number() {
      String text = computed.isEmpty() ? published.replace(",", "") : computed;
      if (text.contains("/")) {
        String[] parts = text.split("[ /]");
        return Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);
      }
      return Double.parseDouble(text);
    }

    /** The numbers in a text, in order. */
    public static double[] numbers(String text) {
      Matcher matcher = NUMBER.matcher(text);
      List<Double> found = new ArrayList<>();
      while (matcher.find()) {
        found.add(Double.parseDouble(matcher.group().replace(",", "")));
      }
      return found.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Override
    public String toString() {
      return id + " " + quantity;
    }
  }

  /** The rows of a table. */
  public static List<Row> rows(String table) {
    Path file = Path.of("src/test/cases/reference", table);
    try (CsvReader<NamedCsvRecord> csv =
        CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(file)) {
      return csv.stream()
          .map(line -> new Row(
              line.getField("id"),
              line.getField("quantity"),
              line.getField("inputs"),
              line.getField("published_value"),
              line.getField("unit"),
              line.getField("computed_exact"),
              line.getField("check"),
              line.getField("source"),
              line.getField("notes")))
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
