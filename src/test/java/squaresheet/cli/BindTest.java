package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.binding.AnyLayout;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** The two demo workbooks of foreign layout, saved by another spreadsheet program, and what an estimator does with them. */
class BindTest {

  @TempDir
  Path folder;

  private Path copy(String name) throws IOException {
    return Files.copy(Path.of("demo-data", name), folder.resolve(name));
  }

  @Test
  void both_demo_layouts_are_bound_without_a_question() {
    for (String name : new String[] {"birch-court.xlsx", "mill-yard.xlsx"}) {
      Ran ran = Ran.of("bind", "demo-data/" + name);
      assertThat(ran.exit()).isZero();
      assertThat(ran.out())
          .contains("Bound:", "nothing was changed; --keep keeps the binding in the workbook")
          .doesNotContain("Not sure", "Not bound");
    }
  }

  @Test
  void every_plane_of_both_layouts_is_read() {
    // by eye: five planes on one sheet; four and two planes side by side on two
    assertThat(Ran.of("bind", "demo-data/birch-court.xlsx").out())
        .contains("planes on Takeoff (5 rows): 10 of 10");
    assertThat(Ran.of("bind", "demo-data/mill-yard.xlsx").out())
        .contains("planes on House (4 rows): 10 of 10", "planes on Shed (2 rows): 10 of 10");
  }

  @Test
  void keeping_hides_a_sheet_in_the_workbook_and_keeps_a_copy() throws IOException {
    Path file = copy("birch-court.xlsx");
    byte[] before = Files.readAllBytes(file);
    Ran ran = Ran.of("bind", file.toString(), "--keep");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("kept what was there as ", "wrote " + file);
    Workbook kept = Xlsx.read(file).value().orElseThrow();
    assertThat(kept.sheets())
        .extracting(Sheet::visibility)
        .containsExactly(
            Sheet.Visibility.VISIBLE, Sheet.Visibility.VISIBLE, Sheet.Visibility.HIDDEN);
    assertThat(AnyLayout.of(kept, "b.xlsx").bound()).allMatch(guess -> guess.sure() == 1);
    try (var files = Files.list(folder)) {
      assertThat(files.filter(other -> !other.equals(file)))
          .singleElement()
          .satisfies(copy -> assertThat(Files.readAllBytes(copy)).isEqualTo(before));
    }
  }

  @Test
  void a_kept_binding_and_a_list_of_findings_are_no_part_of_what_is_verified() throws IOException {
    for (String name : new String[] {"birch-court.xlsx", "mill-yard.xlsx"}) {
      Path file = copy(name);
      Path marked = folder.resolve("marked.xlsx");
      String before = Ran.of("verify", file.toString()).out();
      String total = Ran.of("totals", file.toString()).out();
      Ran.of("bind", file.toString(), "--keep");
      assertThat(Ran.of("verify", file.toString()).out()).isEqualTo(before);
      assertThat(Ran.of("totals", file.toString()).out()).isEqualTo(total);
      Ran.of("mark", file.toString(), "-o", marked.toString(), "--force");
      assertThat(Xlsx.read(marked).value().orElseThrow().sheet("Squaresheet findings"))
          .isPresent();
      assertThat(Ran.of("verify", marked.toString()).out().replace("marked.xlsx", name))
          .isEqualTo(before);
    }
  }

  @Test
  void a_cell_is_meant_on_the_only_sheet_of_theirs_beside_a_kept_binding() {
    Path file = folder.resolve("one.xlsx");
    Draft draft = new Draft();
    DraftSheet sheet = draft.sheet("Quote");
    sheet.put(Ref.parse("A1"), Entry.text("Grand total"));
    sheet.put(
        Ref.parse("B1"), Entry.formula("2*600", new Content.Numeric(1200)).format("$#,##0.00"));
    Xlsx.write(draft, file, Existing.REFUSE);
    assertThat(Ran.of("bind", file.toString(), "--keep").exit()).isZero();
    assertThat(Ran.of("explain", file.toString(), "B1").exit()).isZero();
  }

  @Test
  void without_keep_nothing_is_written() throws IOException {
    Path file = copy("mill-yard.xlsx");
    byte[] before = Files.readAllBytes(file);
    Ran.of("bind", file.toString());
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void a_list_written_to_fill_in_is_taken_back() throws IOException {
    Path file = copy("birch-court.xlsx");
    Path list = folder.resolve("list.csv");
    Ran.of("bind", file.toString(), "--fill-in", list.toString());
    String lines = Files.readString(list);
    assertThat(lines).contains("Takeoff,D3,Run (ft),planes,run,ft,down,");
    Files.writeString(list, lines.replace("planes,run,ft", "planes,up_slope,ft"));
    Ran told = Ran.of("bind", file.toString(), "--mapping", list.toString(), "--keep");
    assertThat(told.out()).contains("up slope, ft").contains("the mapping says so");
    assertThat(AnyLayout.of(Xlsx.read(file).value().orElseThrow(), "b.xlsx").bound())
        .extracting(guess -> guess.at() + " " + guess.property())
        .contains("Takeoff!D3 up_slope");
  }

  @Test
  void a_list_with_a_line_that_cannot_be_read_keeps_nothing() throws IOException {
    Path file = copy("birch-court.xlsx");
    byte[] before = Files.readAllBytes(file);
    Path list = Files.writeString(
        folder.resolve("list.csv"), "sheet,cell,table,property\nTakeof,D3,planes,run\n");
    Ran ran = Ran.of("bind", file.toString(), "--mapping", list.toString(), "--keep");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).contains("there is no 'Takeof'");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  /** Lengths of which nobody says the unit. */
  private Path withoutUnits() {
    Draft draft = new Draft();
    DraftSheet sheet = draft.sheet("Roof");
    List<String> headings = List.of("Section", "Length", "Rafter", "Pitch", "Area");
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 5; column++) {
        Entry item = column == 0
            ? Entry.text("Side " + row)
            : column == 4
                ? Entry.formula("B" + (row + 1) + "*C" + (row + 1), new Content.Numeric(626))
                : Entry.number(column == 1 ? 40 : column == 2 ? 15.65 : 6);
        sheet.put(new Ref(row, column), row == 0 ? Entry.text(headings.get(column)) : item);
      }
    }
    Path file = folder.resolve("short.xlsx");
    Xlsx.write(draft, file);
    return file;
  }

  @Test
  void a_person_at_the_terminal_is_asked_what_is_not_sure_and_in_which_unit() {
    Path file = withoutUnits();
    assertThat(Ran.of("bind", file.toString()).out()).contains("Not sure").doesNotContain("is it?");
    Ran ran =
        Ran.answering("?\neve\ny furlong\neave\nft\ny ft\ny\nsq ft\ny\n", "bind", file.toString());
    assertThat(ran.out())
        .contains("it can be: plane, shape, eave,")
        .contains("nearest: 'eave'")
        .contains("no unit 'furlong'")
        .contains("in which unit?")
        .contains("Keep this in the workbook, with a copy as it was? (y/n)");
    assertThat(AnyLayout.of(Xlsx.read(file).value().orElseThrow(), "s.xlsx").bound())
        .extracting(guess -> guess.at() + " " + guess.property() + " " + guess.unit())
        .contains("Roof!B1 eave ft", "Roof!C1 up_slope ft");
  }

  @Test
  void answers_that_end_leave_the_rest_unbound_and_the_file_as_it_is() throws IOException {
    Path file = withoutUnits();
    byte[] before = Files.readAllBytes(file);
    Ran ran = Ran.answering("", "bind", file.toString());
    assertThat(ran.exit()).isZero();
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void verify_finds_no_error_in_either_demo_layout_and_says_what_it_could_not_check() {
    Ran birch = Ran.of("verify", "demo-data/birch-court.xlsx");
    assertThat(birch.exit()).isZero();
    assertThat(birch.out())
        .contains("Not checked against a model:", "Bid!B12 (Labor)", "0 findings");
    assertThat(Ran.of("verify", "demo-data/mill-yard.xlsx").out()).contains("0 findings");
  }

  @Test
  void verify_names_a_wrong_cell_of_a_foreign_layout_with_what_it_is_worth() throws IOException {
    Path file = copy("birch-court.xlsx");
    Xlsx.edit(
        file,
        List.of(new Edit.SetContent(Address.of("Bid", "E7"), new Content.Numeric(309))),
        file,
        Existing.REPLACE);
    Ran ran = Ran.of("verify", file.toString());
    assertThat(ran.exit()).isEqualTo(3);
    // by hand: 5 rolls at 78 make 390; 81 short, with 6.5 % tax 86.265
    assertThat(ran.out()).contains("Bid!E7", "should be 390", "86.265");
  }
}
