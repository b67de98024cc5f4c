package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Read;
import squaresheet.job.Unread;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Plane;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.Shape;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.DraftSheet.Paper;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.SheetBuilder;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;

class FieldSheetTest {

  private static Read<FieldNotes> demo() throws IOException {
    String csv = Files.readString(Path.of("demo-data/tape-sheet.csv"));
    return FieldSheet.read(csv, "tape-sheet.csv", Locale.ENGLISH);
  }

  private static String all(Read<?> read) {
    return read.findings().stream()
        .map(finding -> finding.info().severity() + " " + finding.where() + ": " + finding.says())
        .reduce("", (one, other) -> one + "\n" + other);
  }

  @Test
  void the_demo_sheet_reads_all_but_its_one_wet_line() throws IOException {
    Read<FieldNotes> read = demo();
    FieldNotes notes = read.value().orElseThrow();
    assertThat(notes.roof().planes())
        .extracting(plane ->
            plane.id() + " " + plane.shape().word() + " " + plane.sides().size())
        .containsExactly(
            "Front polygon 7",
            "Back rectangle 3",
            "Wing left parallelogram 3",
            "Wing right parallelogram 3",
            "Wing end triangle 2",
            "Porch rectangle 3");
    assertThat(notes.unread())
        .extracting(unread -> unread.where() + ": " + unread.understood())
        .containsExactly("tape-sheet.csv, line 23: plane Back, opening Skylight?, what skylight");
    assertThat(read.findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .containsExactly(
            "tape-sheet.csv, line 17, Pitch: pitch reads '26.57°', which is 6:12 to its last digit; taken as 6:12",
            "tape-sheet.csv, line 23, Width: length must read like 24' 6 1/2\" or 7.48 m, but reads 'about two foot'",
            "tape-sheet.csv, line 23, Up the slope: length must read like 24' 6 1/2\" or 7.48 m, but reads 'wet page'");
  }

  @Test
  void planes_beside_rakes_and_ridges_are_never_taken_for_headings() {
    String gable = ",rectangle,30',15',,,6/12,slope,rake,ridge,rake\n";
    Read<FieldNotes> read = FieldSheet.read("""
        Unit for bare numbers,feet

        Planes
        Plane,Shape,Eave,Up the slope,Top,Offset,Pitch,Measured,Left edge,Top edge,Right edge
        A%1$sB%1$sC%1$sLong left%1$sE%1$sLeft slope%1$s\
        G,parallelogram,20',10',20',5',6/12,slope,rake,ridge,rake
        """.formatted(gable), "tape.csv", Locale.ENGLISH);
    Roof roof = Roof.resolve(read.value().orElseThrow().roof()).value().orElseThrow();
    assertThat(roof.planes())
        .extracting(Plane::id)
        .as("every row that was typed; said: %s", all(read))
        .containsExactly("A", "B", "C", "Long left", "E", "Left slope", "G");
    assertThat(roof.slopedArea().squareFeet())
        .as("by hand: six of 30 by 15 and one of 20 by 10")
        .isCloseTo(2900, within(1e-9));
  }

  @Test
  void a_plane_by_its_corners_is_never_taken_for_a_heading() {
    FieldNotes notes = FieldSheet.read("""
            Unit for bare numbers,feet

            Planes
            Plane,Shape,Eave,Up the slope,Top,Offset,Pitch,Measured,Left edge,Top edge,Right edge,Corners,Edges in order
            Back,trapezoid,41,8,24,,3.5 in 12,plan,hip / Right,ridge / Front,hip / Left
            Left,triangle,16.5,8,,,3.5 in 12,plan,hip / Back,,hip / Front
            Yard,polygon,,,,,40.6%,slope,,,,"0, 0; 6, 0; 6, 4; 0, 4","eave, rake, ridge / none, rake"
            Lane,rectangle,34,11,,,9.5 in 12,slope,rake,ridge / none,rake
            """, "sheet.csv", Locale.ENGLISH).value().orElseThrow();
    assertThat(notes.roof().planes())
        .extracting(PlaneNotes::id)
        .containsExactly("Back", "Left", "Yard", "Lane");
    assertThat(notes.unread()).isEmpty();
  }

  @Test
  void the_demo_sheet_keeps_its_wording_and_its_labels() throws IOException {
    FieldNotes notes = demo().value().orElseThrow();
    assertThat(notes.wording("plane Back", "up_slope")).isEqualTo("15-7 13/16");
    assertThat(notes.text("eave_overhang")).contains("1' 6\"");
    assertThat(notes.text("code_edition")).contains("2021");
    assertThat(notes.text("tear_off_layers")).contains("1");
    assertThat(notes.unit()).isEqualTo(TapeUnit.FEET);
  }

  @Test
  void the_demo_roof_resolves_and_its_taped_edges_agree() throws IOException {
    Read<Roof> roof = Roof.resolve(demo().value().orElseThrow().roof());
    assertThat(roof.findings()).isEmpty();
    // hips and valleys: 10 ft by 11' 2 3/16", √(120² + 134.1875²) = 180.02 in, taped within half an
    // inch
    assertThat(roof.value().orElseThrow().length(EdgeKind.HIP).inches())
        .isCloseTo(360, within(0.5));
  }

  @Test
  void a_workbook_reads_like_the_same_lines_of_text() throws IOException {
    String csv = Files.readString(Path.of("demo-data/tape-sheet.csv"));
    SheetBuilder sheet = Sheet.builder("Tape");
    Grid lines = LineGrid.of("tape-sheet.csv", csv);
    for (int row = 0; row < lines.rows(); row++) {
      for (int column = 0; column < lines.columns(); column++) {
        sheet.content(row, column, "General", lines.cell(row, column).stored());
      }
    }
    FieldNotes typed = FieldSheet.read(Drawn.workbook(sheet.build()), "tape.xlsx", Locale.ENGLISH)
        .value()
        .orElseThrow();
    assertThat(typed.wording()).isEqualTo(demo().value().orElseThrow().wording());
    assertThat(typed.unread().get(0).where().toString()).isEqualTo("tape.xlsx, Tape!A23");
  }

  @Test
  void a_sheet_without_a_unit_says_what_its_bare_numbers_were_taken_for() {
    Read<FieldNotes> read = FieldSheet.read("""
        Plane,Shape,Eave,Up the slope,Pitch,Measured
        A,rectangle,40,15.65,6/12,slope
        B,rectangle,40,,6/12,
        """, "notes.csv", Locale.ENGLISH);
    assertThat(all(read))
        .contains(
            "WARNING notes.csv: the sheet must say the unit for bare numbers (feet, inches, metres"
                + " or millimetres), but does not; bare numbers are taken as feet");
    assertThat(read.value().orElseThrow().unread())
        .extracting(Unread::understood)
        .containsExactly("plane B, pitch 6/12, shape rectangle, eave 40");
  }

  @Test
  void rows_under_every_table_are_told_and_the_rest_is_read() {
    Read<FieldNotes> read = FieldSheet.read("""
        Unit,feet
        Plane,Shape,Eave,Up the slope,Pitch,Measured
        A,rectangle,40',15',6/12,slope



        Shed,rectangle,12,8,4/12,slope
        ladder at the back
        Wall offset,6 in
        """, "tape.csv", Locale.ENGLISH);
    assertThat(read.value().orElseThrow().roof().planes()).hasSize(1);
    assertThat(all(read)).isEqualTo("""

        ERROR tape.csv, line 7: a row must stand under the headings of a table, without two blank rows\
         between, but stands outside every table; nothing of it is read: 'Shed | rectangle | 12 | 8 | 4/12 | slope'
        NOTE tape.csv, line 8: a text outside the tables is kept as a remark: 'ladder at the back'""");
    assertThat(read.value().orElseThrow().unread())
        .extracting(Unread::written)
        .containsExactly(List.of("Shed", "rectangle", "12", "8", "4/12", "slope"));
  }

  @Test
  void a_metric_sheet_with_decimal_commas_and_semicolons_is_read() {
    Read<FieldNotes> read = FieldSheet.read("""
        Job;;;;;
        Unit;metres;;;;
        Decimal mark;comma;;;;
        Plane;Shape;Eave;Up the slope;Pitch;Measured
        A;rectangle;12,20;4,77;26,57°;plan
        """, "aufmass.csv", Locale.ENGLISH);
    assertThat(read.isClean()).isTrue();
    assertThat(read.value().orElseThrow().roof().planes().get(0).shape())
        .isEqualTo(new Shape.Rectangle(
            Length.fromMillimetres(new java.math.BigDecimal("12200")),
            Length.fromMillimetres(new java.math.BigDecimal("4770"))));
  }

  @Test
  void a_file_without_planes_is_said_to_have_none() {
    Read<FieldNotes> read = FieldSheet.read("Dear customer,\n", "letter.csv", Locale.ENGLISH);
    assertThat(all(read))
        .isEqualTo(
            "\nERROR letter.csv: a field sheet must have a table of planes with headings like"
                + " Plane, Shape, Eave, Up the slope, Pitch, but there is none"
                + "\nNOTE letter.csv, line 1: nothing is read of this row: 'Dear customer'");
  }

  @Test
  void the_blank_form_filled_in_reads_back() {
    Draft form = FieldSheet.blank(Paper.LETTER);
    DraftSheet sheet = form.find("Field sheet").orElseThrow();
    fill(sheet, "Unit for bare numbers", 2, "feet");
    fill(sheet, "Eave overhang past the wall", 2, "1' 6\"");
    int plane = fill(sheet, "Plane", 0, "") + 1;
    List<String> cells = List.of("A", "rectangle", "40", "15' 8\"", "", "", "6:12", "slope");
    for (int at = 0; at < cells.size(); at++) {
      sheet.put(new Ref(plane, at), Entry.text(cells.get(at)));
    }
    Read<FieldNotes> read = FieldSheet.read(form.workbook(), "field.xlsx", Locale.ENGLISH);
    assertThat(read.isClean()).isTrue();
    FieldNotes notes = read.value().orElseThrow();
    assertThat(notes.text("eave_overhang")).contains("1' 6\"");
    assertThat(notes.roof().planes()).hasSize(1);
    assertThat(notes.roof().planes().get(0).shape())
        .isEqualTo(new Shape.Rectangle(Length.of(40, 0), Length.of(15, 8)));
  }

  /** Types beside the label; gives its row. */
  private static int fill(DraftSheet sheet, String label, int column, String text) {
    int row = sheet.entries().entrySet().stream()
        .filter(entry -> entry.getKey().column() == 0
            && entry.getValue().stored() instanceof Content.Text it
            && it.value().equals(label))
        .findFirst()
        .orElseThrow()
        .getKey()
        .row();
    if (!text.isEmpty()) {
      sheet.put(new Ref(row, column), Entry.text(text));
    }
    return row;
  }
}
