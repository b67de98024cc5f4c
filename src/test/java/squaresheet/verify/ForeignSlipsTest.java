package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.xlsx.Xlsx;

/**
 * Slips of the hand in two estimators' own workbooks, one at a time, saved and calculated by another program: each is told.
 * A line reads {@code book | cell | what is put there | check}; which slips people make is common practice, no source.
 */
class ForeignSlipsTest {

  @TempDir
  Path folder;

  private static final String SLIPS = """
      birch-court|Bid!B13|=SUM(E4:E8)|total-stops-short
      birch-court|Bid!B14|=B12|total-passes-step
      birch-court|Bid!B14|=B12+B12|total-takes-part-twice
      birch-court|Bid!B14|=B12-B13|total-takes-part-off
      birch-court|Bid!B15|6.5|rate-out-of-reason
      birch-court|Bid!B16|=B12*B15|tax-step-off
      birch-court|Bid!B16|=B13*(1+B15)|tax-step-off
      birch-court|Bid!B16|=B13/B15|tax-step-off
      birch-court|Bid!B16|=B13+B15|rate-added-as-amount
      birch-court|Bid!B17|=B13+B16|total-passes-step
      birch-court|Bid!B17|=B12+B16|total-passes-step
      birch-court|Bid!B17|=B14|total-passes-step
      birch-court|Bid!B17|=B12+B13|total-passes-step
      birch-court|Bid!B17|=B14+B15|rate-added-as-amount
      birch-court|Bid!B17|=B14-B16|total-takes-part-off
      birch-court|Bid!B17|=B12+B14+B16|total-takes-part-twice
      birch-court|Bid!B17|=SUM(B12:B16)|total-includes-subtotal
      mill-yard|Summary!B3|18|rate-out-of-reason
      mill-yard|Summary!B4|20|rate-out-of-reason
      mill-yard|Summary!B13|=E11*B3|total-takes-part-off
      mill-yard|Summary!B13|=E11*(1+B4)|rate-nobody-reads
      mill-yard|Summary!B13|=E11|rate-nobody-reads
      mill-yard|Summary!B13|=E11*(1-B3)|total-takes-part-off
      mill-yard|Summary!B14|=B13*B3|tax-step-off
      mill-yard|Summary!B14|=B13*(1+B4)|tax-step-off
      mill-yard|Summary!B15|=E11+B14|total-passes-step
      mill-yard|Summary!B15|=B13|total-passes-step
      mill-yard|Summary!B15|=E11+B13+B14|total-takes-part-twice
      mill-yard|Summary!B15|=B13-B14|total-takes-part-off
      mill-yard|Summary!B15|=B13+B13|total-takes-part-twice
      mill-yard|Summary!C7|m|result-in-other-unit
      mill-yard|House!C11|0.92 m²|note-in-number-cell
      """;

  @TestFactory
  Stream<DynamicTest> a_slip_in_an_estimators_own_workbook_is_told() {
    return SLIPS
        .lines()
        .map(line -> DynamicTest.dynamicTest(line, () -> {
          List<String> said = findings(line.split("\\|")).stream()
              .filter(finding -> !finding.info().severity().equals(Severity.NOTE)
                  || finding.info().id().contains("typed"))
              .map(DrawnChecksTest::at)
              .toList();
          assertThat(said).as(line).anyMatch(it -> it.startsWith(line.split("\\|")[3] + " at "));
        }));
  }

  @TestFactory
  Stream<DynamicTest> the_same_workbook_without_the_slip_is_silent() {
    return Stream.of("birch-court|Takeoff!A11|Waste", "mill-yard|Summary!A4|VAT rate")
        .map(line -> DynamicTest.dynamicTest(line, () -> assertThat(findings(line.split("\\|")))
            .filteredOn(finding -> finding.info().severity() != Severity.NOTE)
            .isEmpty()));
  }

  private List<Finding> findings(String[] slip) throws IOException {
    Path file = folder.resolve("slip.xlsx");
    try (var in = Files.newInputStream(Path.of("demo-data", slip[0] + ".xlsx"));
        var book = WorkbookFactory.create(in)) {
      CellReference at = new CellReference(slip[1]);
      put(book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol()), slip[2]);
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      try (var out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
    return Verify.of(Xlsx.read(file).value().orElseThrow(), file.toString()).findings();
  }

  private static void put(Cell cell, String text) {
    if (text.startsWith("=")) {
      cell.setCellFormula(text.substring(1));
      return;
    }
    cell.removeFormula();
    if (text.matches("\\d+(\\.\\d+)?")) {
      cell.setCellValue(Double.parseDouble(text));
    } else {
      cell.setCellValue(text);
    }
  }
}
