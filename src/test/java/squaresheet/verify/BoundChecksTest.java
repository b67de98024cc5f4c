package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import squaresheet.sheet.Workbook;

/** Foreign layouts, each bound by its own headings; the marks are all that the checks of bound cells may say of it. */
class BoundChecksTest {

  private static final Path CASES = Path.of("src/test/cases/checks");

  private static Set<String> ids() {
    return Checks.ofBoundBooks().stream()
        .map(ask -> ask.check().info().id())
        .collect(Collectors.toSet());
  }

  private static Stream<String> drawings(String id) {
    try {
      return Arrays.stream(Files.readString(CASES.resolve(id + ".txt")).split("(?m)^# "))
          .filter(part -> !part.isBlank());
    } catch (IOException missing) {
      throw new UncheckedIOException("every check has drawings", missing);
    }
  }

  @TestFactory
  Stream<DynamicTest> a_bound_cell_is_called_wrong_where_it_is_marked_and_nowhere_else() {
    return ids().stream().flatMap(id -> drawings(id)
        .map(drawing -> DynamicTest.dynamicTest(
            id + ": " + drawing.lines().findFirst().orElse(""), () -> holds(drawing))));
  }

  private static void holds(String drawing) {
    DrawnBook drawn = DrawnBook.of(drawing.substring(drawing.indexOf('\n') + 1));
    Set<String> said = Verify.of(drawn.workbook(), "drawn.xlsx").findings().stream()
        .filter(finding -> ids().contains(finding.info().id()))
        .map(DrawnChecksTest::at)
        .collect(Collectors.toCollection(TreeSet::new));
    assertThat(said).isEqualTo(drawn.marks());
  }

  @TestFactory
  Stream<DynamicTest> every_check_has_a_mistake_and_a_clean_look_alike() {
    return ids().stream()
        .map(id -> DynamicTest.dynamicTest(id, () -> {
          assertThat(drawings(id)).anyMatch(drawing -> drawing.contains("<- " + id));
          assertThat(drawings(id)).anyMatch(drawing -> !drawing.contains("<- "));
        }));
  }

  @Test
  void what_is_not_bound_is_no_finding_and_is_said_to_be_unchecked() {
    Workbook book = DrawnBook.of("""
        sheet: Roof
        1 | Plane | Eave (ft) | Rafter (ft) | Pitch | Roof area (sf) | Fudge
        2 | Front | 40 | 15 | 6 | =B2*C2 | =E2*1.5
        3 | Back | 40 | 15 | 6 | =B3*C3 | =E3*1.5
        """).workbook();
    Verdict verdict = Verify.of(book, "drawn.xlsx");
    assertThat(verdict.findings()).isEmpty();
    assertThat(verdict.moneyPath().modelled()).isEqualTo(2);
    assertThat(verdict.moneyPath().notChecked())
        .anyMatch(line -> line.startsWith("Roof!F2:F3 "))
        .anyMatch(line -> line.startsWith("Roof!F1: the column 'Fudge' is not bound"));
  }
}
