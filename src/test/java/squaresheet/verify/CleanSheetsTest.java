package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Workbook;
import squaresheet.xlsx.Xlsx;

/** No check speaks, at warning or above, about a sheet that is in order, whichever check it was drawn for. */
class CleanSheetsTest {

  private static List<Finding> loud(Verdict verdict) {
    return verdict.findings().stream()
        .filter(finding -> finding.info().severity() != Severity.NOTE)
        .toList();
  }

  @TestFactory
  Stream<DynamicTest> a_sheet_drawn_clean_for_one_check_is_clean_for_all() throws IOException {
    return Drawing.all()
        .filter(drawing -> drawing.isClean())
        .map(drawing -> DynamicTest.dynamicTest(drawing.check() + ": " + drawing.title(), () -> {
          Verdict verdict = Verify.of(drawing.book().workbook(), "drawn.xlsx");
          assertThat(loud(verdict)).isEmpty();
        }));
  }

  @TestFactory
  Stream<DynamicTest> a_template_is_clean() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("workbooks"))) {
      return files.filter(file -> file.toString().endsWith(".xlsx")).sorted().toList().stream()
          .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> {
            Workbook workbook = Xlsx.read(file).value().orElseThrow();
            assertThat(loud(Verify.of(workbook, file.toString()))).isEmpty();
          }));
    }
  }

  @Test
  void the_demo_is_clean_beside_its_model() {
    assertThat(loud(Verify.of(new DemoWorkbook().saved(), "demo.xlsx"))).isEmpty();
  }
}
