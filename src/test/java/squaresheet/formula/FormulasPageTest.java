package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Read;

/** What docs/formulas.md says of formulas is so. */
class FormulasPageTest {

  private static final Path PAGE = Path.of("docs/formulas.md");
  private static final Pattern EXAMPLE = Pattern.compile("\\| `=(.*)` \\| (.*) \\|");

  @Test
  void the_examples_come_to_what_they_say() throws IOException {
    List<String> lines = Files.readAllLines(PAGE);
    int run = 0;
    for (String line : lines) {
      Matcher example = EXAMPLE.matcher(line);
      if (example.matches()) {
        Value value = Formula.of(example.group(1)).evaluate(cell -> new Value.Blank());
        boolean number = example.group(2).matches("[0-9.]+");
        Value said = number
            ? new Value.Number(Double.parseDouble(example.group(2)))
            : new Value.Text(example.group(2));
        assertThat(value).as(example.group(1)).isEqualTo(said);
        run++;
      }
    }
    assertThat(run).isEqualTo(12);
  }

  @Test
  void the_functions_it_lists_are_followed() throws IOException {
    String list = Files.readAllLines(PAGE).stream()
        .filter(line -> line.matches("- [a-z ]+: .*[A-Z]{3,}.*|  [A-Z0-9. ()a-z,]+"))
        .collect(Collectors.joining(" "));
    List<String> unknown = Arrays.stream(list.split("[^A-Z0-9.]+"))
        .filter(word -> word.matches("[A-Z][A-Z0-9.]+") && !Catalog.names().contains(word))
        .toList();
    assertThat(unknown).isEmpty();
    assertThat(list).contains("SUMPRODUCT", "XLOOKUP", "EOMONTH");
  }

  @Test
  void the_faulty_formula_it_shows_is_said_so() throws IOException {
    Read<Formula> read = Formula.parse("=ROUND(A1,0");
    assertThat(read.value()).isEmpty();
    assertThat(Files.readString(PAGE)).contains(Formula.diagnose("=ROUND(A1,0"));
  }
}
