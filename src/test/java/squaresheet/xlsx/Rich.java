package squaresheet.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.DataConsolidateFunction;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook by another library, with things this one knows nothing about. */
final class Rich {

  private Rich() {}

  static byte[] workbook() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFSheet planes = workbook.createSheet("Planes");
      cells(workbook, planes);
      decorate(workbook, planes);
      XSSFSheet plain = workbook.createSheet("Plain");
      plain.createRow(0).createCell(0).setCellValue("plain");
      table(workbook.createSheet("Tables"));
      workbook.createName().setNameName("known_name");
      workbook.getName("known_name").setRefersToFormula("Planes!$B$2");
      workbook.write(bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return withMore(bytes.toByteArray());
  }

  private static void cells(XSSFWorkbook workbook, XSSFSheet planes) {
    XSSFRow heading = planes.createRow(0);
    XSSFFont slanted = workbook.createFont();
    slanted.setItalic(true);
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(slanted);
    for (String word : new String[] {"plane", "eave", "rake", "area"}) {
      int at = Math.max(0, heading.getLastCellNum());
      heading.createCell(at).setCellValue(word);
      heading.getCell(at).setCellStyle(style);
    }
    for (int i = 1; i <= 4; i++) {
      XSSFRow row = planes.createRow(i);
      row.createCell(0).setCellValue("plane " + i);
      row.createCell(1).setCellValue(20 + i + 0.5);
      row.createCell(2).setCellValue(12);
      row.createCell(3).setCellValue((20 + i + 0.5) * 12);
      row.createCell(4).setCellFormula("B" + (i + 1) + "&\"\"");
    }
    planes.setArrayFormula("B2:B5*2", CellRangeAddress.valueOf("F2:F5"));
    planes.createRow(7).createCell(0).setCellValue("merged");
    planes.addMergedRegion(CellRangeAddress.valueOf("A8:C8"));
  }

  private static void decorate(XSSFWorkbook workbook, XSSFSheet planes) {
    ConditionalFormattingRule rule =
        planes.getSheetConditionalFormatting().createConditionalFormattingRule("B2>30");
    planes
        .getSheetConditionalFormatting()
        .addConditionalFormatting(new CellRangeAddress[] {CellRangeAddress.valueOf("B2:B5")}, rule);
    XSSFComment note = planes
        .createDrawingPatriarch()
        .createCellComment(new XSSFClientAnchor(0, 0, 0, 0, 3, 3, 5, 6));
    note.setAddress(3, 3);
    note.setString("already here");
    note.setAuthor("owner");
    XSSFHyperlink link = workbook.getCreationHelper().createHyperlink(HyperlinkType.URL);
    link.setAddress("https://example.org/");
    planes.getRow(0).getCell(0).setHyperlink(link);
    chart(planes);
    planes
        .createPivotTable(
            new AreaReference("A1:D5", workbook.getSpreadsheetVersion()),
            new CellReference("K20"),
            planes)
        .addColumnLabel(DataConsolidateFunction.SUM, 3);
  }

  private static void chart(XSSFSheet planes) {
    XSSFChart chart = planes
        .createDrawingPatriarch()
        .createChart(new XSSFClientAnchor(0, 0, 0, 0, 8, 10, 14, 20));
    XDDFChartData data = chart.createData(
        ChartTypes.BAR,
        chart.createCategoryAxis(AxisPosition.BOTTOM),
        chart.createValueAxis(AxisPosition.LEFT));
    data.addSeries(
        XDDFDataSourcesFactory.fromStringCellRange(planes, CellRangeAddress.valueOf("A2:A5")),
        XDDFDataSourcesFactory.fromNumericCellRange(planes, CellRangeAddress.valueOf("B2:B5")));
    chart.plot(data);
  }

  private static void table(XSSFSheet sheet) {
    sheet.createRow(0).createCell(0).setCellValue("product");
    sheet.getRow(0).createCell(1).setCellValue("price");
    sheet.createRow(1).createCell(0).setCellValue("starter");
    sheet.getRow(1).createCell(1).setCellValue(42.5);
    XSSFTable table =
        sheet.createTable(new AreaReference("A1:B2", sheet.getWorkbook().getSpreadsheetVersion()));
    table.setName("Prices");
    table.setDisplayName("Prices");
    table.getCTTable().getTableColumns().getTableColumnArray(0).setName("product");
    table.getCTTable().getTableColumns().getTableColumnArray(1).setName("price");
  }

  /** Adds by hand what the other library does not write: a shared formula, a calculation chain, unknown extensions. */
  private static byte[] withMore(byte[] zip) {
    try {
      Path file = Files.createTempFile("rich", ".xlsx");
      Files.write(file, zip);
      Map<String, byte[]> parts = ZipParts.of(file);
      Files.delete(file);
      change(
          parts,
          "xl/worksheets/sheet1.xml",
          "<c r=\"D2\" t=\"n\" s=\"0\"><v>",
          "<c r=\"D2\" t=\"n\" s=\"0\"><f t=\"shared\" ref=\"D2:D5\" si=\"0\">B2*$C2</f><v>");
      for (int i = 3; i <= 5; i++) {
        change(
            parts,
            "xl/worksheets/sheet1.xml",
            "<c r=\"D" + i + "\" t=\"n\" s=\"0\"><v>",
            "<c r=\"D" + i + "\" t=\"n\" s=\"0\"><f t=\"shared\" si=\"0\"/><v>");
      }
      change(
          parts,
          "xl/worksheets/sheet1.xml",
          "</worksheet>",
          "<extLst><ext uri=\"{00000000-0000-0000-0000-000000000000}\" xmlns:zz=\"urn:unknown\"><zz:thing  a='1'\n b=\"2\"/></ext></extLst></worksheet>");
      change(
          parts,
          "[Content_Types].xml",
          "</Types>",
          "<Override PartName=\"/xl/calcChain.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml\"/>"
              + "<Override PartName=\"/customXml/item1.xml\" ContentType=\"application/xml\"/></Types>");
      change(
          parts,
          "xl/_rels/workbook.xml.rels",
          "</Relationships>",
          "<Relationship Id=\"rId77\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/calcChain\" Target=\"calcChain.xml\"/></Relationships>");
      parts.put(
          "xl/calcChain.xml",
          "<calcChain xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><c r=\"D2\" i=\"1\"/></calcChain>"
              .getBytes(StandardCharsets.UTF_8));
      parts.put(
          "customXml/item1.xml",
          "<kept xmlns=\"urn:kept\"> as  is </kept>".getBytes(StandardCharsets.UTF_8));
      return ZipParts.zip(parts);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static void change(Map<String, byte[]> parts, String part, String from, String to) {
    String text = new String(parts.get(part), StandardCharsets.UTF_8);
    if (!text.contains(from)) {
      throw new IllegalStateException(part + " has no " + from);
    }
    parts.put(part, text.replace(from, to).getBytes(StandardCharsets.UTF_8));
  }
}
