package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;

/** Expected values are those that each writer's own reader gives for its file. */
class OtherWritersTest {

  @TempDir
  Path folder;

  private static squaresheet.sheet.Workbook read(Path file) {
    var read = Xlsx.read(file);
    assertThat(read.findings()).isEmpty();
    return read.value().orElseThrow();
  }

  @Test
  void a_file_of_the_object_model_reads_the_same() throws IOException {
    Path file = folder.resolve("poi.xlsx");
    Files.write(file, Rich.workbook());
    sameAsPoi(file);
  }

  @Test
  void a_file_with_everything_reads_the_same() throws IOException {
    sameAsPoi(
        Files.write(folder.resolve("boat-house.xlsx"), ZipParts.zip(Everything.declaredParts())));
  }

  private static void sameAsPoi(Path file) throws IOException {
    squaresheet.sheet.Workbook ours = read(file);
    int compared = 0;
    try (InputStream in = new FileInputStream(file.toFile());
        XSSFWorkbook poi = new XSSFWorkbook(in)) {
      for (int i = 0; i < poi.getNumberOfSheets(); i++) {
        XSSFSheet sheet = poi.getSheetAt(i);
        Sheet mine = ours.sheet(sheet.getSheetName()).orElseThrow();
        for (org.apache.poi.ss.usermodel.Row row : sheet) {
          for (org.apache.poi.ss.usermodel.Cell cell : (XSSFRow) row) {
            compared += same((XSSFCell) cell, mine);
          }
        }
        assertThat(mine.merged()).hasSameSizeAs(sheet.getMergedRegions());
        assertThat(mine.tables()).hasSameSizeAs(sheet.getTables());
        assertThat(mine.comments()).hasSameSizeAs(sheet.getCellComments());
      }
    }
    assertThat(compared).isPositive();
  }

  private static int same(XSSFCell theirs, Sheet sheet) {
    Cell ours = sheet.cell(theirs.getReference());
    String place = sheet.name() + "!" + theirs.getReference();
    boolean formula = theirs.getCellType() == org.apache.poi.ss.usermodel.CellType.FORMULA;
    assertThat(ours.formula()).as(place).isEqualTo(formula ? theirs.getCellFormula() : "");
    assertThat(ours.format()).as(place).isEqualTo(theirs.getCellStyle().getDataFormatString());
    Content expected =
        switch (formula ? theirs.getCachedFormulaResultType() : theirs.getCellType()) {
          case NUMERIC -> new Content.Numeric(theirs.getNumericCellValue());
          case STRING -> new Content.Text(theirs.getStringCellValue());
          case BOOLEAN -> new Content.Truth(theirs.getBooleanCellValue());
          case ERROR -> new Content.Fault(theirs.getErrorCellString());
          default -> new Content.Blank();
        };
    boolean noValueYet = formula && ours.stored().isBlank();
    if (!noValueYet) {
      assertThat(ours.stored()).as(place).isEqualTo(expected);
    }
    return 1;
  }

  @Test
  void a_file_of_the_streaming_writer_reads_the_same() throws IOException {
    Path file = folder.resolve("fast.xlsx");
    try (OutputStream out = Files.newOutputStream(file);
        Workbook workbook = new Workbook(out, "test", "1.0")) {
      Worksheet sheet = workbook.newWorksheet("Roof & more");
      for (int row = 0; row < 500; row++) {
        sheet.value(row, 0, "plane " + row % 7);
        sheet.value(row, 1, row / 8.0 + 0.1);
        sheet.value(row, 2, row % 2 == 0);
        sheet.formula(row, 3, "B" + (row + 1) + "*2");
        sheet.value(row, 20, row);
      }
    }
    Sheet ours = read(file).sheets().get(0);
    int compared = 0;
    try (ReadableWorkbook theirs = new ReadableWorkbook(file.toFile());
        Stream<Row> rows = theirs.getFirstSheet().openStream()) {
      for (Row row : rows.toList()) {
        for (int column = 0; column < row.getCellCount(); column++) {
          Optional<org.dhatim.fastexcel.reader.Cell> cell = row.getOptionalCell(column);
          if (cell.isPresent()) {
            same(cell.get(), ours.cell(new Ref(row.getRowNum() - 1, column)));
            compared++;
          }
        }
      }
    }
    assertThat(compared).isEqualTo(ours.size()).isEqualTo(2500);
  }

  private static void same(org.dhatim.fastexcel.reader.Cell theirs, Cell ours) {
    if (theirs.getType() == CellType.NUMBER) {
      assertThat(ours.stored()).isEqualTo(new Content.Numeric(theirs.asNumber().doubleValue()));
    } else if (theirs.getType() == CellType.STRING) {
      assertThat(ours.stored()).isEqualTo(new Content.Text(theirs.asString()));
    } else if (theirs.getType() == CellType.BOOLEAN) {
      assertThat(ours.stored()).isEqualTo(new Content.Truth(theirs.asBoolean()));
    } else {
      assertThat(ours.formula()).isEqualTo(theirs.getFormula());
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      General
      0.00
      0,000.00
      d-mmm
      m/d/yy
      mm:ss
      [h]:mm:ss
      [Red]0.0
      0.00E+00
      0.0" days"
      yyyy\\-mm\\-dd;@
      [$-409]d-mmm-yy
      0%
      _(* #,##0.00_)
      h:mm AM/PM
      @
      0.0 "h"
      dd.mm.yyyy
      """)
  void a_date_format_is_told_as_the_object_model_tells_it(String format) {
    Cell cell = new Cell(new Content.Numeric(43000), "", format);
    assertThat(cell.isDate()).isEqualTo(DateUtil.isADateFormat(200, format));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # serial | 1904 | as the object model has it
      61       | false
      60       | false
      1        | false
      43263    | false
      43263.75 | false
      100      | true
      """)
  void a_day_is_the_one_the_object_model_gives(double serial, boolean date1904) {
    var workbook = new squaresheet.sheet.Workbook(
        java.util.List.of(),
        java.util.List.of(),
        date1904,
        squaresheet.sheet.Workbook.Calculation.USUAL,
        java.util.List.of(),
        java.util.Map.of());
    assertThat(workbook.date(serial)).contains(DateUtil.getLocalDateTime(serial, date1904));
  }
}
