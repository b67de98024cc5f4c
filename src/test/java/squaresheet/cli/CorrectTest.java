package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** What verify finds, put right in a copy and written into the workbook: in foreign layouts and in our own. */
class CorrectTest {

  @TempDir
  Path folder;

  private static Edit typed(String sheet, String cell, double value) {
    return new Edit.SetContent(Address.of(sheet, cell), new Content.Numeric(value));
  }

  private Path slipped(Path from, Edit... edits) {
    Path file = folder.resolve("slipped.xlsx");
    assertThat(Xlsx.edit(from, List.of(edits), file, Existing.REPLACE).value()).isPresent();
    return file;
  }

  private Path birch() {
    return slipped(
        Path.of("demo-data/birch-court.xlsx"),
        typed("Takeoff", "J6", 3.35),
        typed("Takeoff", "B11", 12),
        typed("Takeoff", "I9", 1500),
        typed("Bid", "E7", 309));
  }

  private static Workbook read(Path file) {
    return Xlsx.read(file).value().orElseThrow();
  }

  private static String formula(Path file, String sheet, String cell) {
    return read(file).cell(Address.of(sheet, cell)).formula();
  }

  @Test
  void what_two_sources_agree_on_is_put_right_in_a_copy_and_the_rest_is_proposed()
      throws IOException {
    Path file = birch();
    byte[] before = Files.readAllBytes(file);
    Path to = folder.resolve("right.xlsx");
    Ran ran = Ran.of("correct", file.toString(), "-o", to.toString());
    assertThat(ran.exit()).as(ran.all()).isEqualTo(3);
    assertThat(ran.out())
        .contains(
            "Bid!E7  309 -> =B7*D7  [typed-over-formula]",
            "2 cells put right, 3 not; every formula shows its new value",
            "  Takeoff!B11  12 -> 0.12  [waste-typed-as-percent]: only one source says so",
            "  Takeoff!J6  3.35 -> =I6/100  [typed-over-formula]: ");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    assertThat(formula(to, "Bid", "E7")).isEqualTo("B7*D7");
    assertThat(number(read(to), "Takeoff", Ref.parse("B11"))).isEqualTo(12);
    assertThat(number(read(to), "Takeoff", Ref.parse("J6"))).isEqualTo(3.35);
  }

  @Test
  void what_is_proposed_is_done_where_a_person_takes_it() throws IOException {
    Path file = birch();
    Path to = folder.resolve("right.xlsx");
    Ran ran = Ran.of(
        "correct",
        file.toString(),
        "-o",
        to.toString(),
        "--take",
        "Takeoff!B11",
        "--take",
        "Takeoff!I6:J9");
    assertThat(ran.exit()).as(ran.all()).isZero();
    assertThat(ran.out()).contains("4 cells put right; every formula shows its new value");
    Ran again = Ran.of("verify", to.toString());
    assertThat(again.exit()).isZero();
    assertThat(again.out()).contains("0 findings");
    // the stored values are those that another program saved in the demo workbook
    Workbook right = read(to);
    read(Path.of("demo-data/birch-court.xlsx")).sheets().forEach(sheet -> sheet
        .cells()
        .filter(placed -> placed.cell().stored() instanceof Content.Numeric)
        .forEach(placed -> assertThat(number(right, sheet.name(), placed.ref()))
            .as(sheet.name() + "!" + placed.ref())
            .isCloseTo(
                ((Content.Numeric) placed.cell().stored()).value(),
                org.assertj.core.api.Assertions.within(1e-6))));
  }

  @Test
  void a_cell_where_nothing_is_proposed_cannot_be_taken() {
    Path to = folder.resolve("right.xlsx");
    Path file = birch();
    Ran nothing = Ran.of("correct", file.toString(), "-o", to.toString(), "--take", "Bid!A1");
    assertThat(nothing.exit()).isEqualTo(2);
    assertThat(nothing.err())
        .contains("there is nothing to take at Bid!A1: no change is proposed there, only at ");
    Ran nowhere = Ran.of("correct", file.toString(), "-o", to.toString(), "--take", "E7");
    assertThat(nowhere.exit()).isEqualTo(2);
    assertThat(nowhere.err())
        .contains("--take must name a cell of the workbook with its sheet, such as ", "is 'E7'");
    assertThat(to).doesNotExist();
  }

  private static double number(Workbook book, String sheet, Ref ref) {
    return ((Content.Numeric) book.cell(new Address(sheet, ref)).stored()).value();
  }

  @Test
  void a_formula_comes_back_across_planes_in_columns_too() {
    Path file = slipped(
        Path.of("demo-data/mill-yard.xlsx"),
        typed("House", "D10", 82.24),
        typed("Shed", "B13", 11),
        typed("Summary", "E8", 854.46));
    Path to = folder.resolve("right.xlsx");
    Ran ran = Ran.of("correct", file.toString(), "-o", to.toString());
    assertThat(ran.exit()).as(ran.all()).isEqualTo(3);
    assertThat(formula(to, "House", "D10")).isEqualTo("D6*D8/2");
    assertThat(formula(to, "Summary", "E8")).isEqualTo("B8*D8");
    assertThat(ran.out()).contains("  Shed!B13  11 -> =B10*COS(RADIANS(B9))  [plane-value");
    assertThat(number(read(to), "Shed", Ref.parse("B13"))).isEqualTo(11);
  }

  @Test
  void a_job_workbook_gets_its_rules_back() {
    Path job = folder.resolve("job.xlsx");
    Ran.of("import", DemoSheet.sound(), "-o", job.toString());
    Path planted = folder.resolve("planted.xlsx");
    Planted.in(job, planted);
    Path to = folder.resolve("right.xlsx");
    Ran first = Ran.of("correct", planted.toString(), "-o", to.toString());
    assertThat(first.exit()).as(first.all()).isEqualTo(3);
    assertThat(first.out()).contains("2 cells put right, 1 not");
    String waste = first
        .out()
        .lines()
        .filter(line -> line.contains("  10 -> 0.1  ["))
        .map(line -> line.strip().split(" ")[0])
        .findFirst()
        .orElseThrow();
    Ran ran =
        Ran.of("correct", planted.toString(), "-o", to.toString(), "--force", "--take", waste);
    assertThat(ran.out()).contains("3 cells put right; every formula");
    Workbook before = read(job);
    Workbook after = read(to);
    List<String> differing = new ArrayList<>();
    before.sheets().forEach(sheet -> sheet
        .cells()
        .filter(placed -> !after
            .cell(new Address(sheet.name(), placed.ref()))
            .formula()
            .replace(" ", "")
            .equals(placed.cell().formula().replace(" ", "")))
        .forEach(placed -> differing.add(sheet.name() + "!" + placed.ref())));
    assertThat(differing).as("every formula is the one that was imported").isEmpty();
    assertThat(Ran.of("verify", to.toString()).out()).doesNotContain("ERROR");
  }

  @Test
  void what_is_in_doubt_is_left_alone_and_said() {
    Path file = slipped(
        Path.of("demo-data/birch-court.xlsx"),
        new Edit.SetFormula(Address.of("Takeoff", "B14"), "1/0", new Content.Fault("#DIV/0!")));
    Path to = folder.resolve("right.xlsx");
    Ran ran = Ran.of("correct", file.toString(), "-o", to.toString());
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out()).contains("nothing was written");
    assertThat(to).doesNotExist();
  }

  @Test
  void a_clean_workbook_is_not_copied() {
    Path to = folder.resolve("right.xlsx");
    Ran ran = Ran.of("correct", "demo-data/birch-court.xlsx", "-o", to.toString());
    assertThat(ran.exit()).isZero();
    assertThat(to).doesNotExist();
  }

  @Test
  void findings_stand_at_their_cells_and_in_a_list_once_however_often_they_are_written() {
    Path file = slipped(
        birch(),
        new Edit.SetComment(Address.of("Bid", "E7"), "The estimator", "ask the yard"),
        new Edit.SetComment(Address.of("Bid", "D4"), "The estimator", "quote of May"));
    Path marked = folder.resolve("marked.xlsx");
    Ran.of("mark", file.toString(), "-o", marked.toString());
    Map<Ref, Sheet.Comment> notes = read(marked).sheet("Bid").orElseThrow().comments();
    assertThat(notes.get(Ref.parse("E7")).text())
        .startsWith("ask the yard\n\nSquaresheet found: ERROR: ")
        .contains("=B7*D7", "Should be 390");
    assertThat(notes.get(Ref.parse("E7")).author()).isEqualTo("The estimator");
    assertThat(notes.get(Ref.parse("D4")).text()).isEqualTo("quote of May");
    Sheet list = read(marked).sheet("Squaresheet findings").orElseThrow();
    assertThat(list.cell("C3").stored()).isEqualTo(new Content.Text("What"));
    Ran.of("mark", marked.toString(), "-o", marked.toString(), "--force");
    assertThat(read(marked).sheet("Bid").orElseThrow().comments()).isEqualTo(notes);
    assertThat(read(marked).sheets()).hasSize(3);
  }

  @Test
  void findings_that_are_gone_leave_no_note_behind() {
    Path marked = folder.resolve("marked.xlsx");
    Path right = folder.resolve("right.xlsx");
    Ran.of(
        "mark",
        slipped(birch(), new Edit.SetComment(Address.of("Bid", "E7"), "The estimator", "ask"))
            .toString(),
        "-o",
        marked.toString());
    Ran corrected = Ran.of(
        "correct",
        marked.toString(),
        "-o",
        right.toString(),
        "--take",
        "Takeoff!B11",
        "--take",
        "Takeoff!I6:J9");
    assertThat(corrected.exit()).as(corrected.all()).isZero();
    Ran.of("mark", right.toString(), "-o", right.toString(), "--force");
    Workbook after = read(right);
    assertThat(after.sheet("Takeoff").orElseThrow().comments()).isEmpty();
    assertThat(after.sheet("Bid").orElseThrow().comments().values())
        .extracting(Sheet.Comment::text)
        .containsExactly("ask");
    assertThat(after.sheet("Squaresheet findings").orElseThrow().cell("A4").isBlank())
        .isTrue();
  }

  @Test
  void the_list_prints_on_its_long_side_with_rows_high_enough_for_what_is_said() throws Exception {
    Path marked = folder.resolve("marked.xlsx");
    Ran.of("mark", slipped(birch()).toString(), "-o", marked.toString());
    try (XSSFWorkbook book = new XSSFWorkbook(marked.toFile())) {
      XSSFSheet list = book.getSheet("Squaresheet findings");
      assertThat(list.getPrintSetup().getLandscape()).isTrue();
      assertThat(list.getFitToPage()).isTrue();
      for (Row row : list) {
        if (row.getRowNum() >= 3) {
          int letters = row.getCell(2).getStringCellValue().length();
          double wide = list.getColumnWidth(2) / 256.0;
          assertThat(row.getHeightInPoints() / 14.0)
              .as("lines of 14 points for " + letters + " letters")
              .isGreaterThanOrEqualTo(Math.floor(letters / wide));
        }
      }
      assertThat(list.getLastRowNum()).as("at least one finding").isGreaterThanOrEqualTo(3);
    }
  }
}
