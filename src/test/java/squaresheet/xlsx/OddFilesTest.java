package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Role;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Files that the standard allows and few programs write. */
class OddFilesTest {

  @TempDir
  Path folder;

  private Path write(Map<String, byte[]> parts) throws IOException {
    return Files.write(folder.resolve("odd.xlsx"), ZipParts.zip(parts));
  }

  private static Workbook read(Path file) {
    var read = Xlsx.read(file);
    assertThat(read.findings()).isEmpty();
    return read.value().orElseThrow();
  }

  private static void change(Map<String, byte[]> parts, String part, String from, String to) {
    String text = new String(parts.get(part), StandardCharsets.UTF_8);
    assertThat(text).contains(from);
    parts.put(part, text.replace(from, to).getBytes(StandardCharsets.UTF_8));
  }

  private static Edit set(String cell, double value) {
    return new Edit.SetContent(Address.of("Planes", cell), new Content.Numeric(value));
  }

  private static Content at(Workbook workbook, String cell) {
    return workbook.cell(Address.of("Planes", cell)).stored();
  }

  @Test
  void the_strict_form_reads_and_is_edited() throws IOException {
    Map<String, byte[]> parts =
        ZipParts.smallest(ZipParts.sheet("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>", ""));
    parts.replaceAll((part, bytes) -> new String(bytes, StandardCharsets.UTF_8)
        .replace("http://schemas.openxmlformats.org/spreadsheetml/2006/main", Family.STRICT.main)
        .replace(
            "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
            Family.STRICT.relationships)
        .getBytes(StandardCharsets.UTF_8));
    Path file = write(parts);
    assertThat(Xlsx.edit(file, List.of(set("B1", 2), new Edit.SetProperty("kept", "yes")))
            .findings())
        .isEmpty();
    Workbook back = read(file);
    assertThat(at(back, "A1")).isEqualTo(new Content.Numeric(1));
    assertThat(at(back, "B1")).isEqualTo(new Content.Numeric(2));
    assertThat(back.properties()).containsEntry("kept", "yes");
    assertThat(ZipParts.text(file, "docProps/custom.xml")).contains(Family.STRICT.properties);
  }

  @Test
  void elements_with_a_prefix_read_and_are_edited_with_the_same_prefix() throws IOException {
    String sheet =
        "<x:worksheet xmlns:x=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
            + "<x:sheetData><x:row r=\"2\"><x:c r=\"B2\" t=\"inlineStr\"><x:is><x:t>eave</x:t></x:is></x:c></x:row></x:sheetData></x:worksheet>";
    Path file = write(ZipParts.smallest(sheet));
    assertThat(
            Xlsx.edit(file, List.of(set("A1", 1), set("B2", 2), set("C2", 3))).findings())
        .isEmpty();
    assertThat(ZipParts.text(file, "xl/worksheets/sheet1.xml"))
        .isEqualTo(
            "<x:worksheet xmlns:x=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                + "<x:sheetData><x:row r=\"1\"><x:c r=\"A1\"><x:v>1</x:v></x:c></x:row>"
                + "<x:row r=\"2\"><x:c r=\"B2\"><x:v>2</x:v></x:c><x:c r=\"C2\"><x:v>3</x:v></x:c></x:row></x:sheetData></x:worksheet>");
    assertThat(at(read(file), "C2")).isEqualTo(new Content.Numeric(3));
  }

  @Test
  void an_empty_sheet_takes_a_cell() throws IOException {
    String sheet = ZipParts.sheet("", "").replace("<sheetData></sheetData>", "<sheetData/>");
    Path file = write(ZipParts.smallest(sheet));
    assertThat(Xlsx.edit(file, List.of(set("C3", 7))).findings()).isEmpty();
    assertThat(read(file).sheets().get(0).used()).contains(Block.parse("C3"));
  }

  @Test
  void sixteen_bit_parts_read_and_are_edited() throws IOException {
    for (Charset wide : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE)) {
      Map<String, byte[]> parts = ZipParts.smallest("");
      String sheet = ZipParts.sheet(
              "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>½</t></is></c></row>", "")
          .replace("UTF-8", "UTF-16");
      parts.put("xl/worksheets/sheet1.xml", sheet.getBytes(wide));
      Path file = write(parts);
      assertThat(at(read(file), "A1")).isEqualTo(new Content.Text("½"));
    }
  }

  @Test
  void a_sheet_in_other_letters_is_edited_and_keeps_its_texts() throws IOException {
    for (Charset letters :
        List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, StandardCharsets.ISO_8859_1)) {
      Map<String, byte[]> parts = ZipParts.smallest("");
      String sheet = ZipParts.sheet(
              "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>½</t></is></c><c r=\"B1\"><v>1</v></c></row>",
              "")
          .replace("UTF-8", letters.name().replace("LE", ""));
      parts.put("xl/worksheets/sheet1.xml", sheet.getBytes(letters));
      Path file = write(parts);
      assertThat(Xlsx.edit(file, List.of(set("B1", 2), set("C1", 3))).findings())
          .as(letters.name())
          .isEmpty();
      assertThat(ZipParts.text(file, "xl/worksheets/sheet1.xml")).contains("UTF-8", "<t>½</t>");
      assertThat(at(read(file), "A1")).isEqualTo(new Content.Text("½"));
      assertThat(at(read(file), "B1")).isEqualTo(new Content.Numeric(2));
      assertThat(at(read(file), "C1")).isEqualTo(new Content.Numeric(3));
    }
  }

  @Test
  void parts_are_found_by_names_however_spelled() throws IOException {
    Map<String, byte[]> parts =
        ZipParts.smallest(ZipParts.sheet("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>", ""));
    byte[] sheet = parts.remove("xl/worksheets/sheet1.xml");
    for (String[] spelled : new String[][] {
      {"xl\\worksheets\\SHEET 1.xml", "worksheets/sheet%201.xml"},
      {"xl/worksheets/sheet%201.xml", "/xl/worksheets/sheet 1.xml"},
      {"xl/sheet+ü.xml", "../xl/./worksheets/../sheet+ü.xml"}
    }) {
      Map<String, byte[]> named = new java.util.LinkedHashMap<>(parts);
      named.put(spelled[0], sheet);
      change(named, "xl/_rels/workbook.xml.rels", "worksheets/sheet1.xml", spelled[1]);
      Path file = write(named);
      assertThat(Xlsx.edit(file, List.of(set("A1", 2), set("B1", 3))).findings())
          .as(spelled[0])
          .isEmpty();
      assertThat(at(read(file), "A1")).isEqualTo(new Content.Numeric(2));
      assertThat(at(read(file), "B1")).isEqualTo(new Content.Numeric(3));
      assertThat(ZipParts.of(file)).hasSameSizeAs(named);
    }
  }

  @Test
  void cells_and_rows_without_addresses_follow_one_another() throws IOException {
    Path file = write(ZipParts.smallest(ZipParts.sheet(
        "<row><c><v>1</v></c><c><v>2</v></c></row><row r=\"4\"><c r=\"C4\"><v>3</v></c><c><v>4</v></c></row>",
        "")));
    assertThat(read(file)
            .sheets()
            .get(0)
            .cells()
            .map(it -> it.ref() + "=" + it.cell().stored())
            .toList())
        .containsExactly(
            "A1=Numeric[value=1.0]",
            "B1=Numeric[value=2.0]",
            "C4=Numeric[value=3.0]",
            "D4=Numeric[value=4.0]");
  }

  @Test
  void what_a_sheet_tells_beside_its_cells_is_read() throws IOException {
    Map<String, byte[]> parts = ZipParts.smallest(
        ZipParts.sheet(
            "<row r=\"2\" hidden=\"1\"><c r=\"A2\" t=\"d\"><v>2026-03-01</v></c><c r=\"B2\" t=\"e\"><v>#REF!</v></c></row>",
            "<autoFilter ref=\"A1:C9\"/><mergeCells count=\"1\"><mergeCell ref=\"A5:C5\"/></mergeCells>"
                + "<dataValidations count=\"1\"><dataValidation type=\"whole\" operator=\"greaterThanOrEqual\" sqref=\"A1 C1:C3\"><formula1>4</formula1></dataValidation></dataValidations>"
                + "<extLst><ext xmlns:x14=\"urn:x\" xmlns:xm=\"urn:y\"><x14:dataValidations><x14:dataValidation type=\"list\"><x14:formula1><xm:f>Lists!$A$1:$A$3</xm:f></x14:formula1><xm:sqref>D1:D9</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst>"));
    change(
        parts,
        "xl/worksheets/sheet1.xml",
        "<sheetData>",
        "<cols><col min=\"2\" max=\"3\" hidden=\"1\"/></cols><sheetData>");
    change(parts, "xl/workbook.xml", "<sheets>", "<workbookPr date1904=\"1\"/><sheets>");
    change(
        parts,
        "xl/workbook.xml",
        "</sheets>",
        "</sheets><definedNames><definedName name=\"local\" localSheetId=\"0\" hidden=\"1\">Planes!$A$1</definedName></definedNames><calcPr calcMode=\"manual\" iterate=\"1\" fullPrecision=\"0\"/>");
    Workbook workbook = read(write(parts));
    Sheet sheet = workbook.sheets().get(0);
    assertThat(sheet.isRowHidden(1)).isTrue();
    assertThat(sheet.isColumnHidden(1) && sheet.isColumnHidden(2) && !sheet.isColumnHidden(3))
        .isTrue();
    assertThat(sheet.filter()).contains(Block.parse("A1:C9"));
    assertThat(sheet.mergedAt(squaresheet.sheet.Ref.parse("B5"))).contains(Block.parse("A5:C5"));
    assertThat(sheet.validations()).hasSize(2);
    assertThat(sheet.validations().get(0).blocks())
        .containsExactly(Block.parse("A1"), Block.parse("C1:C3"));
    assertThat(sheet.validations().get(0).comparison())
        .isEqualTo(Sheet.Validation.Comparison.GREATER_THAN_OR_EQUAL);
    assertThat(sheet.validations().get(1).first()).isEqualTo("Lists!$A$1:$A$3");
    assertThat(workbook.date(((Content.Numeric) sheet.cell("A2").stored()).value()))
        .contains(java.time.LocalDate.of(2026, 3, 1).atStartOfDay());
    assertThat(sheet.cell("A2").isDate()).isTrue();
    assertThat(sheet.cell("B2").stored()).isEqualTo(new Content.Fault("#REF!"));
    assertThat(workbook.calculation())
        .isEqualTo(new Workbook.Calculation(true, false, true, false));
    assertThat(workbook.name("local", "Planes").orElseThrow().hidden()).isTrue();
    assertThat(workbook.name("local")).isEmpty();
  }

  @Test
  void links_to_other_files_are_told_and_macros_not_run() throws IOException {
    Map<String, byte[]> parts = ZipParts.smallest(
        ZipParts.sheet("<row r=\"1\"><c r=\"A1\"><f>[1]Prices!B2</f><v>9</v></c></row>", ""));
    change(
        parts,
        "xl/workbook.xml",
        "</sheets>",
        "</sheets><externalReferences><externalReference r:id=\"rId9\"/></externalReferences>");
    change(
        parts,
        "xl/_rels/workbook.xml.rels",
        "</Relationships>",
        "<Relationship Id=\"rId9\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLink\" Target=\"externalLinks/externalLink1.xml\"/>"
            + "<Relationship Id=\"rId8\" Type=\"http://schemas.microsoft.com/office/2006/relationships/vbaProject\" Target=\"vbaProject.bin\"/></Relationships>");
    parts.put(
        "xl/externalLinks/externalLink1.xml",
        "<externalLink xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"/>"
            .getBytes(StandardCharsets.UTF_8));
    parts.put(
        "xl/externalLinks/_rels/externalLink1.xml.rels",
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"rId1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLinkPath\" Target=\"prices.xlsx\" TargetMode=\"External\"/></Relationships>"
            .getBytes(StandardCharsets.UTF_8));
    parts.put("xl/vbaProject.bin", new byte[] {1, 2, 3});
    change(
        parts,
        "[Content_Types].xml",
        "</Types>",
        "<Override PartName=\"/xl/vbaProject.bin\" ContentType=\"application/vnd.ms-office.vbaProject\"/></Types>");
    change(
        parts,
        "[Content_Types].xml",
        "vnd.openxmlformats-officedocument.spreadsheetml.sheet.main",
        "vnd.ms-excel.sheet.macroEnabled.main");
    var read = Xlsx.read(write(parts));
    assertThat(read.findings())
        .extracting(it -> it.says())
        .containsExactly("holds macros, which were not run");
    Workbook workbook = read.value().orElseThrow();
    assertThat(workbook.externalLinks()).containsExactly("prices.xlsx");
    assertThat(workbook.cell(Address.of("Planes", "A1")).formula()).isEqualTo("[1]Prices!B2");
  }

  @Test
  void a_file_without_styles_refuses_a_look_with_a_sentence() throws IOException {
    Path file = write(ZipParts.smallest(ZipParts.sheet("", "")));
    var saved = Xlsx.edit(
        file, List.of(new Edit.SetRole(Address.of("Planes", "A1"), Role.FLAG, "General")));
    assertThat(saved.findings())
        .extracting(it -> it.says())
        .containsExactly(
            "'odd.xlsx' has no styles part, so cells cannot be given a look; save it once in a spreadsheet program");
  }
}
