package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Severity;
import squaresheet.xlsx.Xlsx;

/**
 * Sheets in order, laid out in a dozen ways by another program and calculated by it: no check says anything about them at
 * warning or above. They are made up for this test, in the manner of small contractors' own sheets.
 */
class CleanBooksTest {

  @TempDir
  Path folder;

  /**
   * A sheet somebody might have.
   *
   * @param name how it is laid out
   * @param fill types it
   */
  record Style(String name, Consumer<Workbook> fill) {}

  private static Style style(String name, String... sheets) {
    return new Style(name, book -> Stream.of(sheets).forEach(text -> type(book, text)));
  }

  /** {@code Name}, then a line for each row, cells parted by bars; formulas begin with an equals sign. */
  static void type(Workbook book, String text) {
    List<String> lines = text.lines().toList();
    Sheet sheet = book.createSheet(lines.get(0).strip());
    for (int at = 1; at < lines.size(); at++) {
      Row row = sheet.createRow(at - 1);
      String[] cells = lines.get(at).split("\\|", -1);
      for (int column = 0; column < cells.length; column++) {
        put(row.createCell(column), cells[column].strip());
      }
    }
  }

  private static void put(Cell cell, String text) {
    if (text.startsWith("=")) {
      cell.setCellFormula(text.substring(1));
    } else if (text.matches("-?\\d+(\\.\\d+)?%?")) {
      boolean percent = text.endsWith("%");
      cell.setCellValue(Double.parseDouble(text.replace("%", "")) / (percent ? 100 : 1));
      CellStyle style = cell.getSheet().getWorkbook().createCellStyle();
      style.setDataFormat(
          cell.getSheet().getWorkbook().createDataFormat().getFormat(percent ? "0.0%" : "General"));
      cell.setCellStyle(style);
    } else if (!text.isEmpty()) {
      cell.setCellValue(text);
    }
  }

  static final List<Style> STYLES = List.of(
      style("one list with subtotals among the amounts", """
          Bid
          Item|Qty|Unit|Price|Amount
          Shingles|54|bundle|39.5|=B2*D2
          Starter|4|bundle|44|=B3*D3
          Cap|5|bundle|62|=B4*D4
          Subtotal roofing||||=SUM(E2:E4)
          Felt|5|roll|78|=B6*D6
          Ice barrier|3|roll|112|=B7*D7
          Subtotal underlayment||||=SUM(E6:E7)
          Labor|16|square|145|=B9*D9
          Subtotal labor||||=SUM(E9:E9)
          Total||||=E5+E8+E10"""),
      style("subtotals that skip each other", """
          Bid
          Item|Qty|Price|Amount
          Shingles|54|39.5|=B2*C2
          Starter|4|44|=B3*C3
          Roofing|||=SUBTOTAL(9,D2:D3)
          Felt|5|78|=B5*C5
          Nails|3|46|=B6*C6
          Sundries|||=SUBTOTAL(9,D5:D6)
          Total|||=SUBTOTAL(9,D2:D7)"""),
      style("planes across, one column each", """
          Roof
          |Front|Back|Garage|Porch|All
          Eave (ft)|40|40|24|16|
          Run (ft)|14|14|12|8|
          Pitch x/12|6|6|4|4|
          Factor|=SQRT(1+(B4/12)^2)|=SQRT(1+(C4/12)^2)|=SQRT(1+(D4/12)^2)|=SQRT(1+(E4/12)^2)|
          Plan area (sf)|=B2*B3|=C2*C3|=D2*D3|=E2*E3|=SUM(B6:E6)
          Roof area (sf)|=B6*B5|=C6*C5|=D6*D5|=E6*E5|=SUM(B7:E7)
          Squares|=B7/100|=C7/100|=D7/100|=E7/100|=SUM(B8:E8)
          Squares with 10% waste||||| =F8*1.1"""),
      style("an exposure as a literal in each formula", """
          Cap
          Run|Length (ft)|Cap pieces|Step flashing pieces
          Ridge|40|=ROUNDUP(B2*12/5.625,0)|
          Hip|22|=ROUNDUP(B3*12/5.625,0)|
          Wall|16||=ROUNDUP(B4*12/5.625,0)
          Total|=SUM(B2:B4)|=SUM(C2:C4)|=SUM(D2:D4)"""),
      style("pieces counted by an exposure in inches, the length in inches too", """
          Cap
          Run|Length (in)|Exposure (in)|Pieces
          Ridge|480|5.625|=ROUNDUP(B2/C2,0)
          Hip|264|5.625|=ROUNDUP(B3/C3,0)
          Hip|264|5|=ROUNDUP(B4/C4,0)"""),
      style("metric, with the slope in degrees", """
          Dach
          Plane|Eave (m)|Height in plan (m)|Pitch (degrees)|Factor|Area (m2)
          North|9.2|4.1|35|=1/COS(RADIANS(D2))|=B2*C2*E2
          South|9.2|4.1|35|=1/COS(RADIANS(D3))|=B3*C3*E3
          Shed|4.0|2.2|22|=1/COS(RADIANS(D4))|=B4*C4*E4
          Sum|||||=SUM(F2:F4)"""),
      style("square feet turned into squares where they are bought", """
          Order
          What|Area (sf)|Squares|Bundles per square|Bundles
          House|2140|=B2/100|3|=ROUNDUP(C2*D2,0)
          Garage|610|=B3/100|3|=ROUNDUP(C3*D3,0)
          Porch|130|=B4/100|3|=ROUNDUP(C4*D4,0)
          Total|=SUM(B2:B4)|=SUM(C2:C4)||=SUM(E2:E4)"""),
      style("a running total, its first row a seed", """
          Log
          Day|Squares laid|So far
          1|6.5|=B2
          2|7|=C2+B3
          3|5.5|=C3+B4
          4|4|=C4+B5"""),
      style("prices looked up on a sheet of their own", """
          Order
          Item|Qty|Price|Amount
          shingle|54|=VLOOKUP(A2,Prices!$A$2:$B$5,2,FALSE)|=ROUND(B2*C2,2)
          starter|4|=VLOOKUP(A3,Prices!$A$2:$B$5,2,FALSE)|=ROUND(B3*C3,2)
          nails|2|=VLOOKUP(A4,Prices!$A$2:$B$5,2,FALSE)|=ROUND(B4*C4,2)
          Total|||=SUM(D2:D4)""", """
          Prices
          Item|Each
          shingle|39.5
          starter|44
          cap|62
          nails|46"""),
      style("markup, tax and the price below the list", """
          Bid
          Item|Cost
          Material|4200
          Labor|2600
          Dump|420
          Cost of the job|=SUM(B2:B4)
          Markup|25%
          Price|=B5*(1+B6)
          Sales tax rate|7.3%
          Sales tax on material|=ROUND(B2*B8,2)
          Total|=B7+B9
          Deposit, a third|=ROUND(B10/3,2)
          Rest|=B10-B11"""),
      style("alternates below the line, a credit within", """
          Quote
          Item|Amount
          Roof|12400
          Gutters|1850
          Customer credit|-250
          Total|=SUM(B2:B4)

          Option: skylight|980
          Option: copper valley|1440"""),
      style("two buildings on sheets alike, both in the summary", """
          House
          Plane|Area (sf)|Squares
          Front|800|=B2/100
          Back|820|=B3/100
          Left|300|=B4/100
          Total|=SUM(B2:B4)|=SUM(C2:C4)""", """
          Garage
          Plane|Area (sf)|Squares
          Front|300|=B2/100
          Back|320|=B3/100
          Left|120|=B4/100
          Total|=SUM(B2:B4)|=SUM(C2:C4)""", """
          Summary
          What|Squares
          House|=House!C5
          Garage|=Garage!C5
          All|=SUM(B2:B3)"""),
      style("waste by shape, typed beside each plane", """
          Planes
          Plane|Shape|Net squares|Waste|Gross squares
          P1|gable|6.3|10%|=C2*(1+D2)
          P2|gable|6.3|10%|=C3*(1+D3)
          P3|hip|3.1|15%|=C4*(1+D4)
          P4|hip|3.1|15%|=C5*(1+D5)
          Total||=SUM(C2:C5)||=SUM(E2:E5)"""),
      style("hours of a crew, by day and by rate", """
          Crew
          Name|Mon|Tue|Wed|Hours|Rate ($/h)|Pay
          A|8|8|6|=SUM(B2:D2)|32|=E2*F2
          B|8|7.5|8|=SUM(B3:D3)|28|=E3*F3
          C|0|8|8|=SUM(B4:D4)|28|=E4*F4
          Total|=SUM(B2:B4)|=SUM(C2:C4)|=SUM(D2:D4)|=SUM(E2:E4)||=SUM(G2:G4)"""));

  /** Results whose headings and formulas speak of units, each of them right. */
  private static final List<String> UNITS = List.of(
      "Length (ft)|Pieces of 10 ft|=ROUNDUP(A2/10,0)|132",
      "Area (sf)|Squares|=A2/100|2140",
      "Squares|Area (sf)|=A2*100|21.4",
      "Length (in)|Length (ft)|=A2/12|264",
      "Length (ft)|Length (in)|=A2*12|22",
      "Area (m2)|Area (sf)|=A2*10.7639|142",
      "Area (sf)|Area (m2)|=A2*0.092903|1530",
      "Length (m)|Length (ft)|=A2*3.28084|12.5",
      "Squares|Bundles|=ROUNDUP(A2*3,0)|21.4",
      "Squares|Nails (lb)|=A2*2.5|21.4",
      "Squares|Labor ($)|=A2*145|21.4",
      "Area (sf)|Rolls|=ROUNDUP(A2/400,0)|2140",
      "Length (ft)|Cap bundles|=ROUNDUP(A2/33,0)|58",
      "Length (ft)|Cap pieces|=ROUNDUP(A2*12/5.625,0)|58",
      "Attic (sf)|Vents|=ROUNDUP(A2/300*144/50,0)|1500",
      "Squares|Weight (lb)|=A2*240|21.4",
      "Weight (lb)|Weight (tons)|=A2/2000|5136",
      "Rise (in)|Slope factor|=SQRT(1+(A2/12)^2)|6",
      "Squares|Hours|=A2*1.6|21.4",
      "Length (ft)|Courses|=INT(A2*12/5.625)|15.65",
      "Bundles|Squares|=A2/3|64",
      "Area (sf)|Sheets of deck|=ROUNDUP(A2/32,0)|310");

  private Verdict verdict(String name, Consumer<Workbook> fill) throws IOException {
    Path file = folder.resolve(name.replaceAll("\\W+", "-") + ".xlsx");
    try (Workbook book = new XSSFWorkbook()) {
      fill.accept(book);
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      try (var out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
    return Verify.of(Xlsx.read(file).value().orElseThrow(), file.toString());
  }

  private static void isSilent(Verdict verdict) {
    assertThat(verdict.findings())
        .filteredOn(finding -> finding.info().severity() != Severity.NOTE)
        .isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> a_clean_sheet_of_any_style_is_silent() {
    return STYLES.stream()
        .map(style -> DynamicTest.dynamicTest(
            style.name(), () -> isSilent(verdict(style.name(), style.fill()))));
  }

  @TestFactory
  Stream<DynamicTest> a_right_result_under_its_heading_is_silent() {
    return UNITS.stream()
        .map(line -> DynamicTest.dynamicTest(
            line,
            () -> isSilent(verdict(line, book -> {
              String[] parts = line.split("\\|");
              type(
                  book,
                  String.join(
                      "\n",
                      "Sheet",
                      parts[0] + "|" + parts[1],
                      parts[3] + "|" + parts[2],
                      parts[3] + "|" + parts[2].replace("A2", "A3")));
            }))));
  }

  @TestFactory
  Stream<DynamicTest> the_same_sheets_with_one_wrong_result_are_not_silent() {
    return Stream.of("Area (sf)|Squares|=A2|2140", "Squares|Area (sf)|=A2|21.4")
        .map(line -> DynamicTest.dynamicTest(line, () -> {
          String[] parts = line.split("\\|");
          Verdict verdict = verdict(
              line,
              book -> type(
                  book,
                  String.join(
                      "\n", "Sheet", parts[0] + "|" + parts[1], parts[3] + "|" + parts[2])));
          assertThat(verdict.findings())
              .anyMatch(finding -> finding.info().severity() != Severity.NOTE);
        }));
  }
}
