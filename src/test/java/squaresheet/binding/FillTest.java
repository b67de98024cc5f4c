package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.roof.Plane;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;
import squaresheet.units.Length;
import squaresheet.units.Pitch;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** A job written into workbooks of estimators' own layouts, and read back out of them. */
class FillTest {

  /** One row filled in as a pattern, three prepared, a sum over all, as an estimator keeps a form. */
  private static final String ROWS = """
      | Takeoff |
      | Section | Shape     | Eave (ft) | Run (ft) | Top (ft) | Slope x/12 | Factor               | Flat area (sf)     | Roof area (sf) | Squares    |
      |         |           |           |          |          |            | =SQRT(1+(F3/12)^2)   | =(C3+E3)/2*D3      | =H3*G3         | =I3/100    |
      |         |           |           |          |          |            |                      |                    |                |            |
      |         |           |           |          |          |            |                      |                    |                |            |
      |         |           |           |          |          |            |                      |                    |                |            |
      | Total   |           |           |          |          |            |                      | =SUM(H3:H6)        | =SUM(I3:I6)    | =SUM(J3:J6)|
      |         |           |           |          |          |            |                      |                    |                |            |
      | Waste   | 12%       |           |          |          |            |                      |                    |                |            |
      | Squares with waste | =J7*(1+B9) |
      """;

  private static final String COLUMNS = """
      | Roof                   |               |               |               |               |
      | Plane                  | A             |               |               | All           |
      | Eave length (m)        | 5             |               |               |               |
      | Top length (m)         | 5             |               |               |               |
      | Height up the slope (m)| 2             |               |               |               |
      | Pitch (degrees)        | 20            |               |               |               |
      | Area on the slope (m²) | =(B3+B4)/2*B5 |               |               | =SUM(B7:D7)   |
      """;

  private static Workbook rows() {
    return Drawn.workbook(Drawn.sheet("Takeoff", ROWS));
  }

  private static Workbook columns() {
    return Drawn.workbook(Drawn.sheet("Areas", COLUMNS));
  }

  private static PlaneNotes plane(String id, Shape shape, long rise) {
    return new PlaneNotes(id, shape, Measured.ON_SLOPE, Pitch.of(rise));
  }

  private static final PlaneNotes RECTANGLE =
      plane("A", new Shape.Rectangle(Length.of(40, 3), Length.parse("15' 7 13/16\"")), 6);
  private static final PlaneNotes TRIANGLE =
      plane("B", new Shape.Triangle(Length.of(24, 0), Length.of(13, 5)), 6);
  private static final PlaneNotes TRAPEZOID =
      plane("C", new Shape.Trapezoid(Length.of(40, 0), Length.of(16, 0), Length.of(13, 5)), 8);

  private static JobResult job(List<PlaneNotes> planes) {
    JobInput input = new JobInput(
        JobCard.of("Elm Row 3"), new RoofNotes(planes), DemoJob.input().company());
    return JobResult.of(input).value().orElseThrow();
  }

  private static Filled filled(Workbook book, PlaneNotes... planes) {
    return AnyLayout.of(book, "bid.xlsx").fill(job(List.of(planes)), "");
  }

  private static double number(Workbook book, String sheet, String cell) {
    return ((Content.Numeric) book.cell(Address.of(sheet, cell)).stored()).value();
  }

  @Test
  void planes_go_into_the_prepared_rows_in_order_with_the_formulas_of_the_row_above() {
    Filled filled = filled(rows(), RECTANGLE, TRIANGLE, TRAPEZOID);
    assertThat(filled.findings()).isEmpty();
    Workbook after = rows().after(filled.edits());
    assertThat(after.cell(Address.of("Takeoff", "A4")).stored()).isEqualTo(new Content.Text("B"));
    assertThat(after.cell(Address.of("Takeoff", "H4")).formula()).isEqualTo("(C4+E4)/2*D4");
    assertThat(after.cell(Address.of("Takeoff", "J5")).formula()).isEqualTo("I5/100");
    // by hand: 40 1/4 ft by 15' 7 13/16"; 24 by 13 5/12 halved; (40 + 16)/2 by 13 5/12
    double hand = 40.25 * (15 + 7.8125 / 12) + 24 * (13 + 5.0 / 12) / 2 + 28 * (13 + 5.0 / 12);
    assertThat(number(after, "Takeoff", "I7")).isCloseTo(hand, within(1e-6));
    assertThat(number(after, "Takeoff", "J7")).isCloseTo(hand / 100, within(1e-8));
  }

  /** 6:12 is 26.565°, which people write 26.57° or 26.56°. */
  @ParameterizedTest
  @ValueSource(doubles = {26.57, 26.56, 26.6})
  void an_angle_that_was_rounded_from_the_pitch_stays_as_it_is(double angle) {
    String drawn = COLUMNS.replace("| 20            |", "| " + angle + "         |");
    Workbook book = Drawn.workbook(Drawn.sheet("Areas", drawn));
    Workbook after = book.after(filled(book, RECTANGLE).edits());
    assertThat(number(after, "Areas", "B3")).isCloseTo(40.25 * 0.3048, within(1e-9));
    assertThat(number(after, "Areas", "B6")).isEqualTo(angle);
  }

  @Test
  void what_was_filled_reads_back_as_the_model() {
    for (Workbook book : List.of(rows(), columns())) {
      Filled filled = filled(book, RECTANGLE, TRIANGLE, TRAPEZOID);
      assertThat(filled.findings()).isEmpty();
      assertThat(areas(read(book.after(filled.edits()))))
          .isEqualTo(areas(job(List.of(RECTANGLE, TRIANGLE, TRAPEZOID)).roof()));
    }
  }

  private static Roof read(Workbook book) {
    return Roof.resolve(AnyLayout.of(book, "bid.xlsx").read().roof()).value().orElseThrow();
  }

  /** Names and areas to a hundredth of a square foot. */
  private static List<String> areas(Roof roof) {
    return roof.planes().stream()
        .map(it -> it.id() + " " + it.shape().word() + " "
            + Math.round(it.grossArea().squareFeet() * 100) + " "
            + it.pitch().rise().setScale(6, java.math.RoundingMode.HALF_UP))
        .toList();
  }

  @Test
  void a_plane_of_that_name_is_written_over_and_formulas_are_left_alone() {
    Workbook book = Drawn.workbook(Drawn.sheet("Areas", """
        | Face  | Eave (ft) | Rafter (ft) | Pitch | Area (sf)   |
        | Front | 40        | 16.8        | 6     | =B2*C2      |
        | Back  | =B2       | 16.8        | 6     | =B3*C3      |
        | Total |           |             |       | =SUM(E2:E3) |
        """));
    Filled filled = filled(
        book,
        plane("front", new Shape.Rectangle(Length.of(44, 0), Length.of(16, 0)), 6),
        plane("Back", new Shape.Rectangle(Length.of(44, 0), Length.of(15, 0)), 7));
    assertThat(filled.changes())
        .extracting(Filled.Change::toString)
        .containsExactly(
            "Areas!B2  front: eave  40 -> 44",
            "Areas!C2  front: up slope  16.8 -> 16",
            "Areas!C3  Back: up slope  16.8 -> 15",
            "Areas!D3  Back: pitch  6 -> 7");
    assertThat(filled.findings()).isEmpty();
    // by hand: 44 x 16 + 44 x 15
    assertThat(number(book.after(filled.edits()), "Areas", "E4")).isEqualTo(1364);
  }

  @Test
  void a_formula_that_makes_something_else_than_the_model_is_said() {
    Workbook book = Drawn.workbook(Drawn.sheet("Areas", """
        | Face  | Eave (ft) | Rafter (ft) | Pitch | Area (sf)   |
        | Front | 40        | 16          | 6     | =B2*C2      |
        | Back  | 40        | 16          | 6     | =B3*C3      |
        """));
    Filled filled = filled(
        book,
        plane("Front", new Shape.Triangle(Length.of(40, 0), Length.of(16, 0)), 6),
        plane("Back", new Shape.Rectangle(Length.of(40, 0), Length.of(16, 0)), 6));
    // by hand: half of 40 x 16 is 320
    assertThat(filled.findings())
        .extracting(it -> it.where() + " " + it.found() + " " + it.expected())
        .containsExactly("bid.xlsx, Areas!E2 640 320 sq ft");
  }

  @Test
  void a_plane_that_the_model_does_not_have_is_said_and_stays() {
    Workbook book = Drawn.workbook(Drawn.sheet("Areas", """
        | Face  | Eave (ft) | Rafter (ft) | Pitch | Area (sf)   |
        | A     | 40        | 16          | 6     | =B2*C2      |
        | Shed  | 10        | 8           | 6     | =B3*C3      |
        | Total |           |             |       | =SUM(E2:E3) |
        """));
    Filled filled = filled(book, RECTANGLE);
    assertThat(filled.findings())
        .extracting(it -> it.where() + ": " + it.says())
        .containsExactly(
            "bid.xlsx, Areas!A3: 'Shed' stands on the sheet but is none of the model's planes;"
                + " it is left as it is and still counts in the sums");
    assertThat(filled.changes()).noneMatch(change -> change.cell().ref().row() == 2);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      =SUM(E2:E3) |         | Areas!E6 would leave it out
      =E2+E3      |         | Areas!E6 would leave it out
      =SUM(E2:E5) |         |
      """)
  void no_row_is_used_that_a_sum_would_leave_out(String total, String unused, String reason) {
    Workbook book = Drawn.workbook(Drawn.sheet("Areas", """
        | Face  | Eave (ft) | Rafter (ft) | Pitch | Area (sf)   |
        | A     | 40        | 16          | 6     | =B2*C2      |
        | D     | 40        | 16          | 6     | =B3*C3      |
        |       |           |             |       | =B4*C4      |
        |       |           |             |       | =B5*C5      |
        | Total |           |             |       | %s          |
        """.formatted(total)));
    PlaneNotes other = plane("D", new Shape.Rectangle(Length.of(40, 0), Length.of(16, 0)), 6);
    Filled filled = filled(
        book,
        RECTANGLE,
        other,
        plane("E", new Shape.Rectangle(Length.of(9, 0), Length.of(9, 0)), 6));
    if (reason == null) {
      assertThat(filled.findings()).isEmpty();
      // by hand: 40 1/4 ft by 15' 7 13/16", 40 by 16, 9 by 9
      assertThat(number(book.after(filled.edits()), "Areas", "E6"))
          .isCloseTo(40.25 * (15 + 7.8125 / 12) + 640 + 81, within(1e-6));
    } else {
      assertThat(filled.edits()).isEmpty();
      assertThat(filled.findings())
          .extracting(it -> it.says())
          .containsExactly("the planes E need 1 free row, but there are 0 (" + reason
              + "); insert 1 row above row 5 of Areas, so that the sums grow with them, and fill"
              + " again; nothing is written");
    }
  }

  @Test
  void a_total_directly_below_the_planes_leaves_no_room_and_nothing_is_written() {
    Workbook book = Drawn.workbook(Drawn.sheet("Areas", """
        | Face  | Eave (ft) | Rafter (ft) | Pitch | Area (sf)   |
        | A     | 40        | 16          | 6     | =B2*C2      |
        | Total |           |             |       | =SUM(E2:E2) |
        """));
    Filled filled = filled(book, RECTANGLE, TRIANGLE, TRAPEZOID);
    assertThat(filled.edits()).isEmpty();
    assertThat(filled.findings())
        .extracting(it -> it.where() + ": " + it.says())
        .containsExactly(
            "bid.xlsx, Areas!A2: the planes B, C need 2 free rows, but there are 0; insert 2"
                + " rows below row 2 of Areas, stretch the sums over them where they do not grow, and"
                + " fill again; nothing is written");
  }

  @Test
  void a_structured_table_and_a_defined_name_must_take_the_new_rows_in() {
    Sheet drawn = Drawn.sheet("Areas", """
        | Face  | Eave (ft) | Rafter (ft) | Pitch | Area (sf)   |
        | A     | 40        | 16          | 6     | =B2*C2      |
        | B     | 40        | 16          | 6     | =B3*C3      |
        """);
    Workbook plain = Drawn.workbook(drawn);
    assertThat(filled(plain, RECTANGLE, TRIANGLE, TRAPEZOID).edits()).isNotEmpty();
    Workbook named = new Workbook(
        plain.sheets(),
        List.of(Workbook.Name.of("AllAreas", "Areas!$E$2:$E$3")),
        false,
        plain.calculation(),
        List.of(),
        java.util.Map.of());
    assertThat(filled(named, RECTANGLE, TRIANGLE, TRAPEZOID).findings())
        .singleElement()
        .satisfies(
            it -> assertThat(it.says()).contains("(the defined name AllAreas would leave it out)"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # typed there | what a pitch of 7:12 becomes | source
      6/12          | 7/12                         | as the column writes it
      6:12          | 7:12                         | as the column writes it
      6 in 12       | 7 in 12                      | as the column writes it
      50%           | 0.5833333                    | 7/12 in a percent format
      """)
  void a_pitch_is_written_as_its_column_writes_it(String typed, String wanted, String source) {
    Workbook book = Drawn.workbook(Drawn.sheet("Areas", """
        | Face  | Eave (ft) | Rafter (ft) | Pitch | Area (sf)   |
        | A     | 40        | 16          | %s    | =B2*C2      |
        | B     | 40        | 16          | %s    | =B3*C3      |
        """.formatted(typed, typed)));
    Filled filled =
        filled(book, plane("A", new Shape.Rectangle(Length.of(40, 0), Length.of(16, 0)), 7));
    assertThat(filled.changes())
        .singleElement()
        .satisfies(change -> assertThat(change.after()).as(source).startsWith(wanted));
  }

  @Test
  void feet_and_inches_texts_and_inches_are_written_as_their_columns_have_them() {
    Workbook book = Drawn.workbook(Drawn.sheet("Areas", """
        | Face  | Eave    | Rafter (in) | Pitch | Area (sf)      |
        | A     | 40' 6"  | 192         | 6     | =40.5*C2/12    |
        | B     | 40' 6"  | 192         | 6     | =40.5*C3/12    |
        """));
    Filled filled = filled(
        book, plane("A", new Shape.Rectangle(Length.parse("24' 6 1/2\""), Length.of(13, 5)), 6));
    assertThat(filled.changes())
        .extracting(Filled.Change::toString)
        .containsExactly(
            "Areas!B2  A: eave  40' 6\" -> 24' 6 1/2\"", "Areas!C2  A: up slope  192 -> 161");
  }

  @Test
  void totals_after_the_filling_equal_the_models_in_another_engine(@TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("form.xlsx");
    Path full = folder.resolve("full.xlsx");
    Workbooks.write(rows(), List.of(), file);
    Workbook book = Xlsx.read(file).value().orElseThrow();
    JobResult job = job(List.of(RECTANGLE, TRIANGLE, TRAPEZOID));
    Filled filled = AnyLayout.of(book, "form.xlsx").fill(job, "");
    assertThat(Xlsx.edit(file, filled.edits(), full, Existing.REFUSE).value()).isPresent();
    try (XSSFWorkbook poi = new XSSFWorkbook(Files.newInputStream(full))) {
      poi.getCreationHelper().createFormulaEvaluator().evaluateAll();
      var total = poi.getSheet("Takeoff").getRow(6);
      assertThat(total.getCell(8).getNumericCellValue())
          .isCloseTo(job.roof().slopedArea().squareFeet(), within(1e-6));
      assertThat(total.getCell(7).getNumericCellValue())
          .isCloseTo(job.roof().planArea().squareFeet(), within(1e-6));
    }
    Workbook again = Xlsx.read(full).value().orElseThrow();
    assertThat(number(again, "Takeoff", "I7"))
        .as("the stored value is the new one")
        .isCloseTo(job.roof().slopedArea().squareFeet(), within(1e-6));
    SecondProgram.needed();
    Workbook resaved = Xlsx.read(SecondProgram.resave(full)).value().orElseThrow();
    assertThat(number(resaved, "Takeoff", "I7"))
        .isCloseTo(job.roof().slopedArea().squareFeet(), within(1e-6));
  }

  @Test
  void layout_results_go_into_their_cells_and_onto_a_sheet_that_is_written_anew() {
    Workbook book = Drawn.workbook(Drawn.sheet("Areas", """
        | Face  | Eave (ft) | Rafter (ft) | Pitch | Area (sf)   | Courses |
        | A     | 40.25     | 16          | 6     | =B2*C2      | 1       |
        | Total |           |             |       | =SUM(E2:E2) |         |
        |       |           |             |       |             |         |
        | Line interval (in) | 1 |
        """));
    JobResult job = job(List.of(RECTANGLE));
    AnyLayout layout = AnyLayout.of(book, "bid.xlsx");
    Workbook after = book.after(layout.fillWithLayout(job, "").edits());
    // by hand: five courses of 5 5/8 in are 28 1/8, on the tape 28; laid 5.6 in
    assertThat(number(after, "Areas", "B5")).isEqualTo(28);
    Sheet added = after.sheet("Squaresheet layout").orElseThrow();
    assertThat(number(after, added.name(), "B7")).isCloseTo(5.6, within(1e-9));
    assertThat(number(after, added.name(), "F15")).isEqualTo(28);
    assertThat(number(after, added.name(), "G15")).isEqualTo(56);
    // by hand: 15' 7 13/16" and 3/4 in past the eave are 188.5625 in; by 5.6 that is 33.67, so 34
    assertThat(number(after, added.name(), "D15")).isEqualTo(34);
    assertThat(number(after, "Areas", "F2")).isEqualTo(34);
    Workbook again =
        after.after(AnyLayout.of(after, "bid.xlsx").fillWithLayout(job, "").edits());
    assertThat(again.sheets()).hasSize(2);
    assertThat(AnyLayout.survey(after, "bid.xlsx").guesses())
        .noneMatch(guess -> guess.at().sheet().equals(added.name()));
  }

  @Provide
  Arbitrary<List<PlaneNotes>> roofs() {
    Arbitrary<Length> lengths =
        Arbitraries.longs().between(48 * 64, 60 * 12 * 64).map(it -> Length.ofInches(it, 64));
    Arbitrary<PlaneNotes> plane = Combinators.combine(
            Arbitraries.integers().between(0, 2),
            lengths,
            lengths,
            lengths,
            Arbitraries.integers().between(8, 48),
            Arbitraries.of(Measured.values()))
        .as((kind, eave, top, height, quarters, how) -> new PlaneNotes(
            "p",
            kind == 0
                ? new Shape.Rectangle(eave, height)
                : kind == 1
                    ? new Shape.Triangle(eave, height)
                    : new Shape.Trapezoid(eave.plus(top), top, height),
            how,
            new Pitch(new BigDecimal(quarters).divide(new BigDecimal(4)))));
    return plane.list().ofMinSize(1).ofMaxSize(3);
  }

  @Property(tries = 60)
  void any_planes_come_back_and_add_up(@ForAll("roofs") List<PlaneNotes> planes) {
    List<PlaneNotes> named = new ArrayList<>();
    for (PlaneNotes each : planes) {
      named.add(new PlaneNotes(
          "Plane " + (named.size() + 1), each.shape(), each.measured(), each.pitch()));
    }
    JobResult job = job(named);
    Workbook book = rows();
    Filled filled = AnyLayout.of(book, "bid.xlsx").fill(job, "");
    assertThat(filled.findings()).isEmpty();
    Workbook after = book.after(filled.edits());
    assertThat(number(after, "Takeoff", "I7"))
        .isCloseTo(job.roof().slopedArea().squareFeet(), within(1e-3));
    List<Plane> back = read(after).planes();
    for (int i = 0; i < back.size(); i++) {
      assertThat(back.get(i).grossArea().squareFeet())
          .isCloseTo(job.roof().planes().get(i).grossArea().squareFeet(), within(1e-3));
    }
    assertThat(back).hasSize(named.size());
  }
}
