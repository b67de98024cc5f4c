package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;

/** Rows of the tape sheet that could not be read withhold the order and the totals until each is answered. */
class UnreadRowsTest {

  private static final String TYPED = "typed after all";
  private static final String LEFT_OUT = "left out on purpose";

  private static final String SOUND = """
      Unit for bare numbers,feet
      Layers to tear off,2
      Planes
      Plane,Shape,Eave,Up the slope,Pitch,Measured,Left edge,Top edge,Right edge
      Front,rectangle,40',15',6/12,slope,rake,ridge / Back,rake
      Back,rectangle,40',15',6/12,slope,rake,ridge / Front,rake
      Porch,rectangle,12',8',4/12,slope,rake,headwall,rake

      Opening,In plane,What,Width,Up the slope
      Stack,Back,chimney,2',2'

      Edge,Plane,Meets,Length
      ridge,Front,Back,40'
      """;

  @TempDir
  Path folder;

  private Ran imported(String csv) throws IOException {
    Path sheet = Files.writeString(folder.resolve("tape.csv"), csv);
    return Ran.of(
        "import", sheet.toString(), "--company", "demo-data", "-o", book().toString(), "--force");
  }

  private Path book() {
    return folder.resolve("job.xlsx");
  }

  private static String lastLine(Ran ran) {
    List<String> lines = ran.out().lines().toList();
    return lines.get(lines.size() - 1);
  }

  /** Answers the row of that name. */
  private JobFile answer(String name, String answer, String reason) {
    JobFile file = new JobFile(book());
    file.type(file.beside("unread_name", name, "unread_answer"), answer);
    return reason.isEmpty()
        ? file
        : file.type(file.beside("unread_name", name, "unread_reason"), reason);
  }

  private Ran verified() {
    return Ran.of("verify", book().toString());
  }

  /** What the first sheet says of rows that were not read, worked out by another engine. */
  private List<String> firstSheet() throws IOException {
    try (XSSFWorkbook read = new XSSFWorkbook(Files.newInputStream(book()))) {
      FormulaEvaluator engine = read.getCreationHelper().createFormulaEvaluator();
      return StreamSupport.stream(read.getSheetAt(0).spliterator(), false)
          .flatMap(row -> StreamSupport.stream(row.spliterator(), false))
          .filter(cell -> cell.getCellType() == CellType.FORMULA)
          .filter(cell -> cell.getCellFormula().contains("unread_"))
          .map(cell -> engine.evaluate(cell).getStringValue())
          .toList();
    }
  }

  @Test
  void a_sheet_that_can_be_read_is_ordered_and_says_nothing_of_missing_rows() throws IOException {
    Ran ran = imported(SOUND);
    assertThat(ran.exit()).as(ran.out()).isZero();
    assertThat(ran.out()).doesNotContain("NOT TO BE ORDERED");
    assertThat(firstSheet()).isEmpty();
    assertThat(verified().exit()).isZero();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # of the sheet | instead | what is missing
      Front,rectangle,40' | Front,rectangle,wet | plane Front is missing
      chimney,2',2' | chimney,2',wet | opening Stack is missing
      Layers to tear off,2 | Layers to tear off,lots | setting Layers torn off is missing
      numbers,feet | numbers,ells | setting Lengths on the tape sheet in is missing
      Back,40' | Back,wet | edge ridge, Front, Back is missing
      6/12,slope,rake,ridge / Back | 6/12,slope,rake,wall | plane Front is missing
      Porch,rectangle,12',8' | Porch,rectangle,-12',8' | plane Porch is missing
      Porch,rectangle | front,rectangle | plane front, once more is missing
      chimney,2',2' | chimney,40',20' | opening Stack is missing
      Stack,Back | Stack,Bak | opening Stack is missing
      """)
  void whatever_cannot_be_read_withholds_order_and_totals(
      String written, String instead, String missing) throws IOException {
    assertThat(SOUND).contains(written);
    Ran ran = imported(SOUND.replaceFirst(java.util.regex.Pattern.quote(written), instead));
    assertThat(ran.exit()).as(ran.out()).isEqualTo(3);
    assertThat(lastLine(ran)).isEqualTo("NOT TO BE ORDERED: " + missing);
    assertThat(firstSheet()).contains("NOT TO BE ORDERED: " + missing);
    assertThat(verified().exit()).isEqualTo(3);
    Ran totals = Ran.of("totals", book().toString());
    assertThat(totals.exit()).isEqualTo(3);
    assertThat(totals.out()).contains("withheld: job.xlsx").doesNotContain("total of 1 job");
  }

  @Test
  void several_are_counted_behind_the_one_that_is_missed_most() throws IOException {
    Ran ran = imported(SOUND
        .replace("Layers to tear off,2", "Layers to tear off,lots")
        .replace("Porch,rectangle,12'", "Porch,rect,12'")
        .replace("chimney,2',2'", "brick chimney,2',2'"));
    String says = "NOT TO BE ORDERED: plane Porch and 2 more rows are missing";
    assertThat(lastLine(ran)).isEqualTo(says);
    assertThat(firstSheet()).contains(says);
    answer("Porch", LEFT_OUT, "the owner does it");
    assertThat(firstSheet())
        .contains("NOT TO BE ORDERED: opening Stack and 1 more row are missing");
  }

  @Test
  void unknown_labels_and_remarks_do_not_withhold() throws IOException {
    Ran ran = imported("Gate code,4711\n" + SOUND + "\n\n\ncall before nine\n");
    assertThat(ran.out())
        .contains("'Gate code' is no label", "4711", "call before nine")
        .doesNotContain("NOT TO BE ORDERED");
    assertThat(ran.exit()).isZero();
    assertThat(verified().exit()).isZero();
  }

  @Test
  void a_row_left_out_for_a_reason_is_answered_and_the_reason_is_shown() throws IOException {
    imported(SOUND.replace("Porch,rectangle,12'", "Porch,rectangle,wet"));
    answer("Porch", LEFT_OUT, "");
    assertThat(verified().out()).contains("left out without a reason", "totals withheld");
    answer("Porch", LEFT_OUT, "the owner does it");
    Ran ran = verified();
    assertThat(ran.out())
        .contains("plane Porch is left out on purpose: the owner does it", "totals can be given");
    assertThat(ran.exit()).isZero();
    assertThat(firstSheet())
        .contains("1 of the rows of the tape sheet left out on purpose, see Not read");
    assertThat(Ran.of("totals", book().toString()).exit()).isZero();
  }

  @Test
  void a_plane_left_out_takes_its_openings_and_frees_its_ridge() throws IOException {
    imported(SOUND.replace("Back,rectangle,40'", "Back,rectangle,wet"));
    answer("Back", LEFT_OUT, "not this year");
    Ran ran = verified();
    assertThat(ran.exit()).as(ran.out()).isZero();
  }

  @Test
  void another_answer_is_none() throws IOException {
    imported(SOUND.replace("Porch,rectangle,12'", "Porch,rectangle,wet"));
    answer("Porch", "done", "yes");
    assertThat(verified().out()).contains("but is answered 'done'", "totals withheld");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # of the sheet | instead | name of the row | what is said
      Front,rectangle,40' | Front,rectangle,wet | Front | no plane of this workbook is called so
      chimney,2',2' | chimney,2',wet | Stack | no opening of this workbook is called so
      Layers to tear off,2 | Layers to tear off,lots | Layers torn off | still is the usual 0
      Back,40' | Back,wet | ridge, Front, Back | no edge of its plane has a taped length
      numbers,feet | numbers,ells | Lengths on the tape sheet in | mend the tape sheet and import it again
      Porch,rectangle | front,rectangle | front, once more | no plane of this workbook is called so
      """)
  void what_is_said_to_be_typed_must_be_there(
      String written, String instead, String name, String says) throws IOException {
    imported(SOUND.replaceFirst(java.util.regex.Pattern.quote(written), instead));
    answer(name, TYPED, "");
    Ran ran = verified();
    assertThat(ran.out()).contains("[unread-row-not-typed]", says);
    assertThat(ran.exit()).isEqualTo(3);
  }

  @Test
  void a_setting_typed_after_all_is_answered() throws IOException {
    imported(SOUND.replace("Layers to tear off,2", "Layers to tear off,lots"));
    JobFile file = answer("Layers torn off", TYPED, "");
    file.edit(new Edit.SetContent(file.at("tear_off_layers", 0), new Content.Numeric(2)));
    Ran ran = verified();
    assertThat(ran.exit()).as(ran.out()).isZero();
  }

  @Test
  void a_row_typed_under_another_name_is_found_by_it() throws IOException {
    imported(SOUND.replace("Porch,rectangle,12'", "Porch,rectangle,wet"));
    answer("Porch", TYPED, "Front");
    Ran ran = verified();
    assertThat(ran.exit()).as(ran.out()).isZero();
  }

  @Test
  void rows_taken_off_the_list_are_missed() throws IOException {
    imported(SOUND.replace("Porch,rectangle,12'", "Porch,rectangle,wet"));
    JobFile file = new JobFile(book());
    Address kind = file.at("unread_kind", 0);
    file.edit(new Edit.SetContent(kind, new Content.Blank()));
    Ran ran = verified();
    assertThat(ran.out()).contains("[unread-rows-gone]");
    assertThat(ran.exit()).isEqualTo(3);
  }
}
