package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Finding;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;

/** What workbooks of other programs do that the smallest and the tidiest do not. */
class FilesInUseTest {

  private static final String RELATION =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";

  @TempDir
  Path folder;

  private static Map<String, byte[]> parts(String rows) {
    return ZipParts.smallest(ZipParts.sheet(rows, ""));
  }

  private Path write(Map<String, byte[]> parts) throws IOException {
    return Files.write(folder.resolve("used.xlsx"), ZipParts.zip(parts));
  }

  private static void change(Map<String, byte[]> parts, String part, String from, String to) {
    String text = new String(parts.get(part), StandardCharsets.UTF_8);
    assertThat(text).contains(from);
    put(parts, part, text.replace(from, to));
  }

  private static void put(Map<String, byte[]> parts, String part, String text) {
    parts.put(part, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Adds a part that the workbook part is related to. */
  private static void add(
      Map<String, byte[]> parts, String id, String kind, String part, String text) {
    change(
        parts,
        "xl/_rels/workbook.xml.rels",
        "</Relationships>",
        "<Relationship Id=\"" + id + "\" Type=\"" + RELATION + kind + "\" Target=\"" + part
            + "\"/></Relationships>");
    put(parts, "xl/" + part, text);
  }

  private static Edit set(String cell, double value) {
    return new Edit.SetContent(Address.of("Planes", cell), new Content.Numeric(value));
  }

  private static Edit comment(String cell) {
    return new Edit.SetComment(Address.of("Planes", cell), "check", "look here");
  }

  private static Edit picture() {
    return new Edit.AddPicture(
        "Planes",
        new DraftSheet.Picture(Block.parse("C3:D6"), DraftSheet.Png.of(Drafts.png()), "a plane"));
  }

  private static Workbook read(Path file) {
    return Xlsx.read(file).value().orElseThrow();
  }

  private static List<String> says(Path file) {
    return Xlsx.read(file).findings().stream().map(Finding::says).toList();
  }

  private List<String> edit(Path file, Edit... edits) {
    return Xlsx.edit(file, List.of(edits), file, Existing.REPLACE).findings().stream()
        .map(Finding::says)
        .toList();
  }

  @Test
  void a_letter_code_in_a_text_is_undone_once_wherever_the_text_is_kept() throws IOException {
    Map<String, byte[]> parts = parts("<row r=\"1\">"
        + "<c r=\"A1\" t=\"inlineStr\"><is><t>_x005F_x0041_</t></is></c>"
        + "<c r=\"B1\" t=\"str\"><f>C1</f><v>_x005F_x0041_</v></c>"
        + "<c r=\"C1\" t=\"s\"><v>0</v></c></row>");
    add(
        parts,
        "rId9",
        "sharedStrings",
        "sharedStrings.xml",
        "<sst xmlns=\"" + Family.TRANSITIONAL.main + "\"><si><t>_x005F_x0041_</t></si></sst>");
    change(
        parts,
        "[Content_Types].xml",
        "</Types>",
        "<Override PartName=\"/xl/sharedStrings.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml\"/></Types>");
    Path file = write(parts);
    for (String cell : List.of("A1", "B1", "C1")) {
      assertThat(read(file).cell(Address.of("Planes", cell)).stored())
          .as("ECMA-376 Part 1, 22.9.2.19: _x005F_ stands for one underscore")
          .isEqualTo(new Content.Text("_x0041_"));
    }
    edit(file, new Edit.SetContent(Address.of("Planes", "A1"), new Content.Text("_x0042_")));
    assertThat(read(file).cell(Address.of("Planes", "A1")).stored())
        .isEqualTo(new Content.Text("_x0042_"));
  }

  @Test
  void a_table_of_values_names_its_row_cell_before_its_column_cell() throws IOException {
    Path file = write(
        parts(
            "<row r=\"1\"><c r=\"A1\"><f t=\"dataTable\" ref=\"A1:A2\" dt2D=\"0\""
                + " dtr=\"0\" r1=\"D1\"/><v>1</v></c>"
                + "<c r=\"B1\"><f t=\"dataTable\" ref=\"B1\" dtr=\"1\" r1=\"D1\"/><v>1</v></c>"
                + "<c r=\"C1\"><f t=\"dataTable\" ref=\"C1\" dt2D=\"1\" dtr=\"1\" r1=\"D1\" r2=\"E1\"/><v>1</v></c></row>"));
    assertThat(Stream.of("A1", "B1", "C1")
            .map(cell -> read(file).cell(Address.of("Planes", cell)).formula()))
        .as("ECMA-376 Part 1, 18.3.1.40: dtr tells a row cell, r1 comes first of two")
        .containsExactly("TABLE(,D1)", "TABLE(D1,)", "TABLE(D1,E1)");
  }

  @Test
  void a_tab_that_lists_macros_is_a_note_and_not_a_fault() throws IOException {
    Map<String, byte[]> parts = parts("");
    change(
        parts,
        "xl/workbook.xml",
        "</sheets>",
        "<sheet name=\"Module1\" sheetId=\"2\" state=\"veryHidden\" r:id=\"\"/></sheets>");
    Path file = write(parts);
    assertThat(says(file)).containsExactly("sheet 'Module1' lists macros, which were not run");
    assertThat(edit(file, set("A1", 1))).isEmpty();
  }

  @Test
  void cells_beyond_the_last_row_or_column_are_left_out_and_refused_an_edit() throws IOException {
    for (String rows : List.of(
        "<row r=\"1\"><c r=\"A1\"><v>1</v></c><c r=\"XFE1\"><v>2</v></c></row>",
        "<row r=\"1\"><c r=\"A1\"><v>1</v></c></row><row r=\"1048577\"><c r=\"A1048577\"><v>2</v></c></row>")) {
      Path file = write(parts(rows));
      assertThat(read(file).sheets().get(0).size()).isEqualTo(1);
      assertThat(edit(file, set("XFD1", 1)))
          .containsExactly(
              "'used.xlsx' was not changed: sheet 'Planes' has cells beyond XFD1048576 and must be"
                  + " saved once in a spreadsheet program before it is changed");
    }
  }

  @Test
  void a_tab_with_a_chart_alone_takes_no_cells_and_says_which_tabs_do() throws IOException {
    Map<String, byte[]> parts = parts("");
    change(
        parts,
        "xl/workbook.xml",
        "</sheets>",
        "<sheet name=\"Chart\" sheetId=\"2\" r:id=\"rId9\"/></sheets>");
    add(
        parts,
        "rId9",
        "chartsheet",
        "chartsheets/sheet1.xml",
        "<chartsheet xmlns=\"" + Family.TRANSITIONAL.main + "\"/>");
    Path file = write(parts);
    assertThat(says(file)).isEmpty();
    assertThat(edit(file, new Edit.SetContent(Address.of("Chart", "A1"), new Content.Numeric(1))))
        .containsExactly("'used.xlsx' has no sheet 'Chart' with cells to change; its sheets with"
            + " cells are 'Planes'");
  }

  @Test
  void a_workbook_of_charts_alone_says_that_none_of_its_tabs_has_cells() throws IOException {
    Map<String, byte[]> parts = parts("");
    change(
        parts,
        "xl/workbook.xml",
        "<sheet name=\"Planes\" sheetId=\"1\" r:id=\"rId1\"/>",
        "<sheet name=\"Chart\" sheetId=\"2\" r:id=\"rId9\"/>");
    add(
        parts,
        "rId9",
        "chartsheet",
        "chartsheets/sheet1.xml",
        "<chartsheet xmlns=\"" + Family.TRANSITIONAL.main + "\"/>");
    Path file = write(parts);
    assertThat(edit(file, new Edit.SetContent(Address.of("Chart", "A1"), new Content.Numeric(1))))
        .containsExactly("'used.xlsx' has no sheet 'Chart' with cells to change; none of its sheets"
            + " has any: its tabs hold charts alone");
  }

  @Test
  void what_one_edit_adds_to_a_sheet_stands_in_the_order_of_the_standard() throws IOException {
    Path file = write(parts("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>"));
    assertThat(edit(
            file,
            comment("A1"),
            picture(),
            new Edit.SetLink(Address.of("Planes", "A2"), "https://example.org/", "")))
        .isEmpty();
    assertThat(ZipParts.text(file, "xl/worksheets/sheet1.xml"))
        .as("ECMA-376 Part 1, 18.3.1.99")
        .containsSubsequence("</sheetData>", "<hyperlinks", "<drawing", "<legacyDrawing");
  }

  @Test
  void what_one_edit_adds_to_a_workbook_stands_in_the_order_of_the_standard() throws IOException {
    Path file = write(parts(""));
    assertThat(
            edit(file, set("A1", 1), new Edit.SetName(Workbook.Name.of("my_area", "Planes!$A$1"))))
        .isEmpty();
    assertThat(ZipParts.text(file, "xl/workbook.xml"))
        .as("ECMA-376 Part 1, 18.2.27")
        .containsSubsequence("</sheets>", "<definedNames", "<calcPr");
  }

  /** Some programs name each part's type and none by its ending. */
  @Test
  void a_file_that_types_no_endings_takes_notes_and_pictures() throws IOException {
    Map<String, byte[]> parts = parts("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>");
    String relations = "application/vnd.openxmlformats-package.relationships+xml";
    change(
        parts,
        "[Content_Types].xml",
        "<Default Extension=\"rels\" ContentType=\"" + relations
            + "\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/>",
        "<Override PartName=\"/_rels/.rels\" ContentType=\"" + relations + "\"/>"
            + "<Override PartName=\"/xl/_rels/workbook.xml.rels\" ContentType=\"" + relations
            + "\"/><Default Extension=\"png\" ContentType=\"image/x-other\"/>");
    Path file = write(parts);
    assertThat(edit(file, comment("A1"), picture())).isEmpty();
    assertThat(says(file)).isEmpty();
    assertThat(ZipParts.text(file, "[Content_Types].xml"))
        .contains("<Default Extension=\"rels\" ContentType=\"" + relations + "\"")
        .contains("<Override PartName=\"/xl/media/image1.png\" ContentType=\"image/png\"");
    try (XSSFWorkbook other = new XSSFWorkbook(Files.newInputStream(file))) {
      assertThat(other.getSheetAt(0).getDrawingPatriarch().getShapes()).hasSize(1);
      assertThat(other.getSheetAt(0).getCellComments()).hasSize(1);
    }
  }

  @Test
  void a_format_gets_a_number_that_no_style_uses_already() throws IOException {
    Map<String, byte[]> parts = parts("<row r=\"1\"><c r=\"A1\" s=\"1\"><v>1</v></c></row>");
    String xf = "<xf numFmtId=\"%d\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/>";
    add(
        parts,
        "rId9",
        "styles",
        "styles.xml",
        "<styleSheet xmlns=\"" + Family.TRANSITIONAL.main + "\"><fonts count=\"1\"><font/></fonts>"
            + "<cellXfs count=\"2\">" + String.format(xf, 0) + String.format(xf, 164)
            + "</cellXfs></styleSheet>");
    Path file = write(parts);
    assertThat(edit(file, new Edit.SetFormat(Address.of("Planes", "B1"), "0.0\" ft\"")))
        .isEmpty();
    assertThat(read(file).cell(Address.of("Planes", "A1")).format()).isEqualTo("General");
    assertThat(read(file).cell(Address.of("Planes", "B1")).format()).isEqualTo("0.0\" ft\"");
  }
}
