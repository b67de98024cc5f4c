package squaresheet.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The cost codes of the demo are letters that a small office makes up, of no numbering that others publish. */
class DemoCodesTest {

  @ParameterizedTest
  @ValueSource(strings = {"prices.csv", "rates.csv", "terms.csv"})
  void a_cost_code_is_three_or_four_letters(String list) throws IOException {
    List<String> codes = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder()
        .commentStrategy(CommentStrategy.SKIP)
        .ofNamedCsvRecord(Path.of("demo-data", list))) {
      rows.forEach(row -> codes.add(row.getField("cost_code")));
    }
    codes.removeIf(String::isEmpty);
    assertThat(codes).isNotEmpty().allMatch(code -> code.matches("[A-Z]{3,4}"));
  }
}
