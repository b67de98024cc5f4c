package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import squaresheet.sheet.Address;

/** Every formula with a published result gives it, or the one decided where documents disagree. */
class FormulaSemanticsTest {

  private static final Path TABLE = Path.of("src/test/cases/reference/formula-semantics.csv");

  @TestFactory
  Stream<DynamicTest> gives_the_published_result() throws IOException {
    return rows().stream()
        .map(row -> DynamicTest.dynamicTest(
            row.getField("id") + " " + row.getField("formula"), () -> check(row)));
  }

  @TestFactory
  Stream<DynamicTest> reads_back_what_it_prints() throws IOException {
    return rows().stream()
        .map(row -> DynamicTest.dynamicTest(row.getField("id"), () -> {
          Formula formula = Formula.of(row.getField("formula"));
          assertThat(Formula.of(formula.toString())).isEqualTo(formula);
          assertThat(Formula.of(formula.toFile())).isEqualTo(formula);
        }));
  }

  private static List<NamedCsvRecord> rows() throws IOException {
    try (CsvReader<NamedCsvRecord> reader =
        CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(TABLE)) {
      return reader.stream().toList();
    }
  }

  private static void check(NamedCsvRecord row) {
    Map<String, Value> cells = new HashMap<>();
    for (String cell : row.getField("cells").split(";")) {
      if (!cell.isEmpty()) {
        int equals = cell.indexOf('=');
        cells.put(
            cell.substring(0, equals),
            Formula.of(cell.substring(equals + 1)).evaluate(scope(Map.of(), "1900")));
      }
    }
    Value value = Formula.of(row.getField("formula")).evaluate(scope(cells, row.getField("dates")));
    matches(value, row.getField("expected"), row.getField("source"));
  }

  private static void matches(Value value, String expected, String source) {
    if (expected.equals("error")) {
      assertThat(value).as(source).isInstanceOf(Value.Fault.class);
    } else if (expected.startsWith("#")) {
      assertThat(value).as(source).isEqualTo(new Value.Fault(expected));
    } else if (expected.matches("TRUE|FALSE")) {
      boolean truth = expected.toUpperCase(Locale.ROOT).equals("TRUE");
      assertThat(value).as(source).isEqualTo(new Value.Truth(truth));
    } else if (value instanceof Value.Number number) {
      assertThat(number.value()).as(source).isCloseTo(Double.parseDouble(expected), within(1e-12));
    } else {
      assertThat(value).as(source).isEqualTo(new Value.Text(expected));
    }
  }

  private static Scope scope(Map<String, Value> cells, String dates) {
    return new Scope() {
      @Override
      public Value cell(Address cell) {
        return cells.getOrDefault(cell.ref().toString(), new Value.Blank());
      }

      @Override
      public Optional<Address> here() {
        return Optional.of(Address.of("Sheet1", "Z99"));
      }

      @Override
      public DateSystem dates() {
        return dates.equals("1904") ? DateSystem.FROM_1904 : DateSystem.FROM_1900;
      }
    };
  }
}
