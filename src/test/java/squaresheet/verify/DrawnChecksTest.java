package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/**
 * Every check, held against sheets drawn in {@code src/test/cases/checks/<check-id>.txt}. A drawing begins with a line
 * {@code # what it shows}; its marks are all that the check may say about it.
 */
class DrawnChecksTest {

  static String at(Finding finding) {
    String place = finding.where() instanceof Where.InCell cell ? cell.cell().toString() : "file";
    return finding.info().id() + " at " + place;
  }

  @TestFactory
  Stream<DynamicTest> a_check_says_what_is_marked_and_nothing_else() {
    return Checks.ofAnyWorkbook().stream().flatMap(ask -> {
      String id = ask.check().info().id();
      return Drawing.of(id).stream()
          .map(drawing ->
              DynamicTest.dynamicTest(id + ": " + drawing.title(), () -> holds(ask, drawing)));
    });
  }

  private static void holds(Ask<?> ask, Drawing drawing) {
    DrawnBook drawn = DrawnBook.of(drawing.text());
    Book book = Book.of("drawn.xlsx", drawn.workbook());
    Set<String> said = ask.ask(Subjects.of(book), "drawn.xlsx").findings().stream()
        .map(DrawnChecksTest::at)
        .collect(Collectors.toCollection(TreeSet::new));
    assertThat(said).as(drawing.title()).isEqualTo(drawn.marks());
  }

  @TestFactory
  Stream<DynamicTest> every_check_has_a_mistake_and_a_clean_look_alike() {
    return Checks.ofAnyWorkbook().stream()
        .map(ask -> ask.check().info().id())
        .map(id -> DynamicTest.dynamicTest(id, () -> {
          List<Drawing> all = Drawing.of(id);
          assertThat(all).anyMatch(drawing -> drawing.text().contains("<- " + id));
          assertThat(all).anyMatch(drawing -> drawing.isClean());
        }));
  }

  /** The clean look-alikes that must stay silent at warning level and above, whichever check is asked. */
  @TestFactory
  Stream<DynamicTest> a_clean_look_alike_stays_silent() {
    return Drawing.of("clean-look-alikes").stream()
        .map(drawing -> DynamicTest.dynamicTest(drawing.title(), () -> {
          Verdict verdict = Verify.of(DrawnBook.of(drawing.text()).workbook(), "drawn.xlsx");
          assertThat(verdict.findings())
              .filteredOn(finding -> finding.info().severity() != Severity.NOTE)
              .isEmpty();
        }));
  }

  /** Sheets with one mistake each, shown to all checks: one cause, one finding. */
  @TestFactory
  Stream<DynamicTest> one_cause_is_said_once() {
    return Drawing.of("one-cause").stream()
        .map(drawing -> DynamicTest.dynamicTest(drawing.title(), () -> {
          DrawnBook drawn = DrawnBook.of(drawing.text());
          Set<String> said = Verify.of(drawn.workbook(), "drawn.xlsx").findings().stream()
              .filter(finding -> finding.info().severity() != Severity.NOTE)
              .map(DrawnChecksTest::at)
              .collect(Collectors.toCollection(TreeSet::new));
          assertThat(said).isEqualTo(drawn.marks());
        }));
  }

  @Test
  void nothing_to_ask_is_not_asked() {
    Verdict verdict = Verify.of(DrawnBook.of("1 | only a word").workbook(), "drawn.xlsx");
    assertThat(verdict.notAsked()).isNotEmpty();
    assertThat(verdict.notAsked().get(0))
        .hasToString(verdict.notAsked().get(0).check().id() + ": not asked");
  }
}
