package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Role;
import squaresheet.sheet.Workbook;

class EditTest {

  @TempDir
  Path folder;

  Path file;

  @BeforeEach
  void write() throws IOException {
    file = folder.resolve("roof.xlsx");
    Files.write(file, Rich.workbook());
  }

  private Map<String, byte[]> edit(Edit... edits) {
    Read<Saved> saved = Xlsx.edit(file, List.of(edits), file, Existing.REPLACE);
    assertThat(saved.findings()).isEmpty();
    assertThat(saved.value()).isPresent();
    return ZipParts.of(file);
  }

  private String refused(Edit... edits) {
    byte[] before = ZipParts.zip(ZipParts.of(file));
    Read<Saved> saved = Xlsx.edit(file, List.of(edits), file, Existing.REPLACE);
    assertThat(saved.value()).isEmpty();
    assertThat(ZipParts.zip(ZipParts.of(file)).length).isEqualTo(before.length);
    return saved.findings().stream().map(Finding::says).findFirst().orElseThrow();
  }

  private static Set<String> changed(Map<String, byte[]> before, Map<String, byte[]> after) {
    Set<String> names = new TreeSet<>(before.keySet());
    names.addAll(after.keySet());
    names.removeIf(name -> java.util.Arrays.equals(before.get(name), after.get(name)));
    return names;
  }

  private Workbook read() {
    Read<Workbook> read = Xlsx.read(file);
    assertThat(read.findings()).isEmpty();
    return read.value().orElseThrow();
  }

  private static Content number(double value) {
    return new Content.Numeric(value);
  }

  private static Content text(String value) {
    return new Content.Text(value);
  }

  @Test
  void a_value_changes_its_sheet_and_the_wish_to_recalculate_and_nothing_else() {
    Map<String, byte[]> before = ZipParts.of(file);
    Map<String, byte[]> after =
        edit(new Edit.SetContent(Address.of("Planes", "B2"), number(31.25)));
    assertThat(changed(before, after))
        .containsExactly("xl/workbook.xml", "xl/worksheets/sheet1.xml");
    assertThat(read().cell(Address.of("Planes", "B2")).stored()).isEqualTo(number(31.25));
    assertThat(read().calculation().fullOnLoad()).isTrue();
  }

  @Test
  void bytes_outside_of_the_changed_cell_stay_as_they_are() {
    String before = ZipParts.text(file, "xl/worksheets/sheet1.xml");
    edit(new Edit.SetContent(Address.of("Planes", "B2"), number(31.25)));
    String after = ZipParts.text(file, "xl/worksheets/sheet1.xml");
    assertThat(after).isEqualTo(before.replaceFirst("(<c r=\"B2\"[^>]*><v>)[^<]*", "$131.25"));
    assertThat(after).isNotEqualTo(before);
  }

  @Test
  void an_edited_file_is_the_same_every_time() throws IOException {
    Edit edit = new Edit.SetContent(Address.of("Planes", "B2"), number(31.25));
    Path one = folder.resolve("one.xlsx");
    Path two = folder.resolve("two.xlsx");
    Xlsx.edit(file, List.of(edit), one, Existing.REFUSE);
    Xlsx.edit(file, List.of(edit), two, Existing.REFUSE);
    assertThat(two).hasSameBinaryContentAs(one);
  }

  @Test
  void other_libraries_and_this_one_read_all_kinds_of_cells_back() throws IOException {
    edit(
        new Edit.SetContent(Address.of("Planes", "A2"), text(" plane <A> & \u0007 ")),
        new Edit.SetContent(Address.of("Planes", "Z90"), number(-0.125)),
        new Edit.SetContent(Address.of("Planes", "A90"), new Content.Truth(true)),
        new Edit.SetContent(Address.of("Planes", "C1"), new Content.Blank()),
        new Edit.SetFormula(Address.of("Planes", "B40"), "IFNA(B2*2,0)", number(49)),
        new Edit.SetFormula(Address.of("Planes", "B41"), "\"a\"&\"b\"", text("ab")));
    Workbook back = read();
    assertThat(back.cell(Address.of("Planes", "A2")).stored())
        .isEqualTo(text(" plane <A> & \u0007 "));
    assertThat(back.cell(Address.of("Planes", "B40")).formula()).isEqualTo("IFNA(B2*2,0)");
    try (InputStream in = new FileInputStream(file.toFile());
        XSSFWorkbook poi = new XSSFWorkbook(in)) {
      XSSFSheet sheet = poi.getSheet("Planes");
      assertThat(sheet.getRow(1).getCell(0).getStringCellValue()).isEqualTo(" plane <A> & \u0007 ");
      assertThat(sheet.getRow(89).getCell(25).getNumericCellValue()).isEqualTo(-0.125);
      assertThat(sheet.getRow(89).getCell(0).getBooleanCellValue()).isTrue();
      XSSFCell formula = sheet.getRow(39).getCell(1);
      assertThat(formula.getCellFormula()).isEqualTo("_xlfn.IFNA(B2*2,0)");
      assertThat(formula.getNumericCellValue()).isEqualTo(49);
      assertThat(sheet.getRow(40).getCell(1).getStringCellValue()).isEqualTo("ab");
    }
  }

  @Test
  void cells_that_shared_a_formula_with_a_changed_one_keep_theirs() {
    Workbook before = read();
    edit(new Edit.SetContent(Address.of("Planes", "D2"), number(480)));
    Workbook after = read();
    assertThat(after.cell(Address.of("Planes", "D2")).formula()).isEmpty();
    for (String ref : List.of("D3", "D4", "D5")) {
      Address cell = Address.of("Planes", ref);
      assertThat(before.cell(cell).formula()).isNotEmpty();
      assertThat(after.cell(cell)).isEqualTo(before.cell(cell));
    }
  }

  @Test
  void the_order_of_the_last_calculation_goes_when_a_formula_goes() {
    assertThat(ZipParts.of(file)).containsKey("xl/calcChain.xml");
    Map<String, byte[]> after = edit(new Edit.SetContent(Address.of("Planes", "D2"), number(480)));
    assertThat(after).doesNotContainKey("xl/calcChain.xml");
    assertThat(ZipParts.text(file, "[Content_Types].xml")).doesNotContain("calcChain");
    assertThat(ZipParts.text(file, "xl/_rels/workbook.xml.rels")).doesNotContain("calcChain");
  }

  @Test
  void looks_are_added_behind_those_that_are_there() throws IOException {
    edit(
        new Edit.SetRole(Address.of("Planes", "B2"), Role.FLAG, "0.00"),
        new Edit.SetRole(Address.of("Planes", "B3"), Role.FLAG, "0.00"),
        new Edit.SetFormat(Address.of("Planes", "A1"), "0.0\" ft\""),
        new Edit.CopyLook(Address.of("Planes", "Q9"), Address.of("Planes", "A1")));
    Workbook back = read();
    assertThat(back.cell(Address.of("Planes", "B2")).format()).isEqualTo("0.00");
    assertThat(back.cell(Address.of("Planes", "A1")).format()).isEqualTo("0.0\" ft\"");
    try (InputStream in = new FileInputStream(file.toFile());
        XSSFWorkbook poi = new XSSFWorkbook(in)) {
      XSSFSheet sheet = poi.getSheet("Planes");
      assertThat(sheet.getRow(1).getCell(1).getCellStyle().getFont().getBold()).isTrue();
      assertThat(sheet.getRow(1).getCell(1).getCellStyle().getBorderTop().name())
          .isEqualTo("MEDIUM_DASHED");
      assertThat(sheet.getRow(2).getCell(1).getCellStyle().getIndex())
          .isEqualTo(sheet.getRow(1).getCell(1).getCellStyle().getIndex());
      assertThat(sheet.getRow(0).getCell(0).getCellStyle().getFont().getItalic())
          .isTrue();
      assertThat(sheet.getRow(8).getCell(16).getCellStyle().getFont().getItalic())
          .isTrue();
    }
  }

  @Test
  void notes_links_and_pictures_are_added_to_those_that_are_there() throws IOException {
    for (String sheet : List.of("Planes", "Plain")) {
      edit(
          new Edit.SetComment(Address.of(sheet, "B3"), "check", "is 4.6, must be 46"),
          new Edit.SetComment(Address.of(sheet, "C3"), "check", "second"),
          new Edit.SetLink(Address.of(sheet, "A5"), "https://example.org/a?b=c&d=e", "tip"),
          new Edit.SetLink(Address.of(sheet, "A6"), "#Plain!A1", ""),
          new Edit.AddPicture(
              sheet,
              new DraftSheet.Picture(
                  Block.parse("H2:J9"), DraftSheet.Png.of(Drafts.png()), "a plane")));
    }
    edit(new Edit.SetComment(Address.of("Plain", "B3"), "office", "changed my mind"));
    try (InputStream in = new FileInputStream(file.toFile());
        XSSFWorkbook poi = new XSSFWorkbook(in)) {
      XSSFSheet planes = poi.getSheet("Planes");
      assertThat(planes.getCellComments()).hasSize(3);
      assertThat(planes.getHyperlinkList()).hasSize(3);
      assertThat(planes.getDrawingPatriarch().getShapes()).hasSize(2);
      XSSFSheet plain = poi.getSheet("Plain");
      assertThat(plain
              .getCellComment(new org.apache.poi.ss.util.CellAddress("B3"))
              .getString()
              .getString())
          .isEqualTo("changed my mind");
      assertThat(
              plain.getCellComment(new org.apache.poi.ss.util.CellAddress("B3")).getAuthor())
          .isEqualTo("office");
      assertThat(plain.getHyperlink(4, 0).getAddress()).isEqualTo("https://example.org/a?b=c&d=e");
      assertThat(plain.getDrawingPatriarch().getShapes()).hasSize(1);
      assertThat(poi.getAllPictures()).hasSize(2);
    }
    assertThat(read().sheet("Plain").orElseThrow().comments()).hasSize(2);
  }

  @Test
  void a_sheet_a_name_and_a_property_are_added() throws IOException {
    Draft draft = Drafts.ofEverything();
    DraftSheet fresh = draft.find("Planes").orElseThrow();
    DraftSheet renamed = draft.sheet("Findings & more").print(fresh.print());
    fresh.entries().forEach(renamed::put);
    fresh.comments().values().forEach(it -> renamed.comment(it.ref(), it.author(), it.text()));
    fresh.validations().forEach(renamed::validate);
    fresh.merged().forEach(renamed::merge);
    renamed.freeze(2, 1).picture(Block.parse("F2:H8"), Drafts.png(), "a plane");
    edit(
        new Edit.AddSheet(renamed),
        new Edit.SetContent(Address.of("Findings & more", "K1"), text("later")),
        new Edit.SetName(Workbook.Name.of("total_area", "'Findings & more'!$D$4")),
        new Edit.SetName(Workbook.Name.of("known_name", "Plain!$A$1")),
        new Edit.SetProperty("squaresheet binding", "v1;planes=A1:D9"),
        new Edit.SetProperty("squaresheet other", "2"));
    edit(new Edit.SetProperty("squaresheet other", "3"));
    Workbook back = read();
    assertThat(back.sheets().get(back.sheets().size() - 1).name()).isEqualTo("Findings & more");
    assertThat(back.cell(Address.of("Findings & more", "D3")))
        .isEqualTo(draft.workbook().cell(Address.of("Planes", "D3")));
    assertThat(back.cell(Address.of("Findings & more", "K1")).stored()).isEqualTo(text("later"));
    assertThat(back.properties()).containsEntry("squaresheet other", "3");
    assertThat(back.name("total_area").orElseThrow().cell())
        .contains(Address.of("Findings & more", "D4"));
    assertThat(back.name("known_name").orElseThrow().text()).isEqualTo("Plain!$A$1");
    try (InputStream in = new FileInputStream(file.toFile());
        XSSFWorkbook poi = new XSSFWorkbook(in)) {
      XSSFSheet sheet = poi.getSheet("Findings & more");
      assertThat(sheet.getRow(2).getCell(3).getCellFormula()).isEqualTo("B3*C3");
      assertThat(sheet.getRow(3).getCell(3).getCellStyle().getFont().getBold()).isTrue();
      assertThat(sheet.getDataValidations()).hasSize(2);
      assertThat(sheet.getCellComments()).hasSize(1);
      assertThat(sheet.getDrawingPatriarch().getShapes()).hasSize(1);
      assertThat(sheet.getRepeatingRows().formatAsString()).isEqualTo("1:2");
      assertThat(poi.getProperties().getCustomProperties().contains("squaresheet binding"))
          .isTrue();
    }
  }

  @Test
  void what_would_break_the_workbook_is_refused_with_a_sentence() {
    List<String> said = new ArrayList<>();
    said.add(refused(new Edit.SetContent(Address.of("Planes", "F3"), number(1))));
    said.add(refused(new Edit.SetContent(Address.of("Planes", "B8"), number(1))));
    said.add(refused(new Edit.SetContent(Address.of("Plans", "A1"), number(1))));
    said.add(refused(new Edit.SetContent(Address.of("Tables", "A1"), text("x"))));
    said.add(refused(new Edit.SetLink(Address.of("Plain", "A1"), "not an address", "")));
    assertThat(said)
        .containsExactly(
            "'roof.xlsx' was not changed: sheet 'Planes' has one formula that fills F2:F5 as a"
                + " whole, so F3 cannot be changed alone",
            "'roof.xlsx' was not changed: sheet 'Planes' has B8 covered by the merged block A8:C8,"
                + " so nothing can be put there; use A8",
            "'roof.xlsx' has no sheet 'Plans' with cells to change; its sheets with cells are 'Planes',"
                + " 'Plain', 'Tables'",
            "'roof.xlsx' was not changed: sheet 'Tables' has A1 as a heading of table 'Prices',"
                + " which only a spreadsheet program can rename",
            "'roof.xlsx' was not changed: sheet 'Plain' cannot have a link to 'not an address',"
                + " because that is not a web or file address");
  }
}
