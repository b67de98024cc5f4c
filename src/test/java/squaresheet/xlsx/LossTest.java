package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TimeZone;
import org.apache.poi.ss.SpreadsheetVersion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Finding;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Role;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** What an edit or a damaged file could take away without a word. */
class LossTest {

  private static final String ONE = "<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>";

  @TempDir
  Path folder;

  private Path write(String sheet) throws IOException {
    return Files.write(folder.resolve("job.xlsx"), ZipParts.zip(ZipParts.smallest(sheet)));
  }

  private static Address at(String cell) {
    return Address.of("Planes", cell);
  }

  private static Edit number(String cell, double value) {
    return new Edit.SetContent(at(cell), new Content.Numeric(value));
  }

  private static String refused(Path file, Edit edit) throws IOException {
    byte[] before = Files.readAllBytes(file);
    var saved = Xlsx.edit(file, List.of(edit));
    assertThat(saved.value()).isEmpty();
    assertThat(file).hasBinaryContent(before);
    return saved.findings().stream().map(Finding::says).findFirst().orElseThrow();
  }

  /** The checksum of a part stands in the list at the end of the zip: APPNOTE.TXT 4.3.12, 16 bytes into its entry, the name 46. */
  @Test
  void a_part_that_does_not_fit_its_checksum_is_not_taken_for_right() throws IOException {
    byte[] zip = ZipParts.zip(ZipParts.smallest(ZipParts.sheet(ONE, "")));
    String text = new String(zip, StandardCharsets.ISO_8859_1);
    zip[text.lastIndexOf("xl/worksheets/sheet1.xml") - 46 + 16] ^= 1;
    Path file = Files.write(folder.resolve("job.xlsx"), zip);
    String damaged =
        "'job.xlsx' must be an .xlsx workbook, but is cut off or damaged; fetch it again, or open an older copy";
    assertThat(Xlsx.read(file).findings()).extracting(Finding::says).containsExactly(damaged);
    assertThat(refused(file, number("B1", 2))).isEqualTo(damaged);
  }

  /** ECMA-376 Part 1, 18.3.1.40 names the cell that has the text of a shared formula; it need not be the first one. */
  @Test
  void cells_do_not_lose_a_formula_that_stands_behind_them() throws IOException {
    Path file = write(ZipParts.sheet(
        "<row r=\"1\"><c r=\"A1\"><f t=\"shared\" si=\"0\"/><v>1</v></c></row>"
            + "<row r=\"2\"><c r=\"A2\"><f t=\"shared\" ref=\"A1:A2\" si=\"0\">B2</f><v>2</v></c></row>",
        ""));
    assertThat(refused(file, number("A2", 5)))
        .isEqualTo(
            "'job.xlsx' was not changed: sheet 'Planes' has the formula of cells above or left of A2 on A2"
                + " and must be saved once in a spreadsheet program before that is changed");
    assertThat(Xlsx.edit(file, List.of(number("A1", 5))).findings()).isEmpty();
    Workbook back = Xlsx.read(file).value().orElseThrow();
    assertThat(back.cell(at("A2")).formula()).isEqualTo("B2");
  }

  @Test
  void a_sheet_without_a_place_for_cells_refuses_them() throws IOException {
    Path file =
        write("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"/>");
    assertThat(refused(file, number("A1", 5)))
        .isEqualTo(
            "'job.xlsx' was not changed: sheet 'Planes' has no place for cells and must be saved once"
                + " in a spreadsheet program before it is changed");
  }

  @Test
  void of_several_notes_and_links_at_one_cell_the_last_counts() throws IOException {
    Path file = write(ZipParts.sheet(ONE, ""));
    Edit first = new Edit.SetComment(at("A1"), "check", "one");
    Edit second = new Edit.SetComment(at("A1"), "check", "two");
    Edit drop = new Edit.DropComment(at("A1"));
    for (List<Edit> edits :
        List.of(List.of(first, second), List.of(second, first, drop, first, second))) {
      assertThat(Xlsx.edit(file, edits).findings()).isEmpty();
      Sheet sheet = Xlsx.read(file).value().orElseThrow().sheets().get(0);
      assertThat(sheet.comments().values()).extracting(Sheet.Comment::text).containsExactly("two");
      assertThat(ZipParts.text(file, "xl/comments1.xml")).containsOnlyOnce("<comment ");
    }
    assertThat(Xlsx.edit(file, List.of(first, drop)).findings()).isEmpty();
    assertThat(Xlsx.read(file).value().orElseThrow().sheets().get(0).comments()).isEmpty();
    Edit link = new Edit.SetLink(at("A1"), "#Planes!B1", "");
    assertThat(Xlsx.edit(file, List.of(link, new Edit.SetLink(at("A1"), "#Planes!C1", "")))
            .findings())
        .isEmpty();
    assertThat(Xlsx.read(file).value().orElseThrow().sheets().get(0).links())
        .extracting(Sheet.Link::target)
        .containsExactly("#Planes!C1");
  }

  /** The limits of text and formula are those of POI's table of them. */
  @Test
  void what_no_program_takes_is_refused() throws IOException {
    Path file = write(ZipParts.sheet(ONE, ""));
    int text = SpreadsheetVersion.EXCEL2007.getMaxTextLength();
    assertThat(Limits.LONGEST_TEXT).isEqualTo(text);
    String most = "x".repeat(text);
    assertThat(refused(file, new Edit.SetContent(at("A1"), new Content.Text(most + "x"))))
        .isEqualTo("'job.xlsx' cannot have a text of 32,768 characters in Planes!A1,"
            + " because a cell takes at most 32,767; nothing was changed");
    assertThat(refused(file, new Edit.SetFormula(at("A1"), "1+".repeat(4096) + "1", number())))
        .contains("a formula of 8,193 characters");
    assertThat(refused(file, new Edit.SetFormat(at("A1"), "0".repeat(256))))
        .contains("a number format of 256 characters");
    assertThat(refused(file, number("A1", Double.NaN))).contains("must be finite");
    assertThat(refused(file, number("A1", Double.POSITIVE_INFINITY))).contains("must be finite");
    assertThat(Xlsx.edit(file, List.of(new Edit.SetContent(at("A1"), new Content.Text(most))))
            .findings())
        .isEmpty();
    assertThat(Xlsx.read(file).value().orElseThrow().cell(at("A1")).stored())
        .isEqualTo(new Content.Text(most));
  }

  private static Content number() {
    return new Content.Numeric(1);
  }

  @Test
  void the_same_draft_gives_the_same_bytes_in_every_time_zone() {
    Draft draft = new Draft();
    draft.sheet("Planes").put("A1", "eave", Role.PLAIN);
    TimeZone here = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("America/St_Johns"));
      byte[] west = Xlsx.bytes(draft);
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
      assertThat(Xlsx.bytes(draft)).isEqualTo(west);
    } finally {
      TimeZone.setDefault(here);
    }
  }
}
