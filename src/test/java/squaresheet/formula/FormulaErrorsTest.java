package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of each faulty formula, to the character. The file is written by people, not by this test. */
class FormulaErrorsTest {

  private static final Path CASES = Path.of("src/test/cases/formula/faulty.txt");

  @Test
  void every_faulty_formula_gets_its_exact_sentence_and_place() throws IOException {
    List<String> lines = Files.readAllLines(CASES).stream()
        .filter(line -> !line.startsWith("#  ") && !line.startsWith("# "))
        .toList();
    List<String> wrong = new ArrayList<>();
    int cases = 0;
    for (int i = 0; i + 3 < lines.size(); i += 4) {
      String text = lines.get(i + 1);
      String expected = text.substring(1) + "\n" + lines.get(i + 2) + "\n" + lines.get(i + 3);
      String said = Formula.diagnose(text);
      if (!said.equals(expected)) {
        wrong.add(said + "\n   but must be\n" + expected);
      }
      cases++;
    }
    assertThat(wrong).isEmpty();
    assertThat(cases).isGreaterThanOrEqualTo(40);
  }

  @Test
  void a_text_longer_than_a_cell_holds_is_refused() {
    assertThat(Formula.diagnose("1" + "+1".repeat(5000)))
        .endsWith(
            "the formula has 10001 characters: a cell takes at most 8192, so move a part of it to a cell of its own");
  }

  @Test
  void brackets_and_chains_are_bounded() {
    assertThat(Formula.diagnose("(".repeat(4000) + "1" + ")".repeat(4000)))
        .endsWith(
            "brackets are nested more than 192 deep: move the inner part to a cell of its own");
    assertThat(Formula.diagnose("1" + "+1".repeat(4000)))
        .endsWith(
            "the formula strings more than 1000 operations together: move a part of it to a cell"
                + " of its own, or use SUM");
    assertThat(Formula.diagnose("-".repeat(8000) + "1")).isNotEmpty();
    assertThat(Formula.diagnose("1" + "%".repeat(8000))).isNotEmpty();
  }
}
