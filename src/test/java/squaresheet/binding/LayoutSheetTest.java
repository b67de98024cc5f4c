package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.Lines;
import squaresheet.formula.Value;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;
import squaresheet.units.Pitch;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** The layout sheet follows its boxed cells, in our own engine and in another program. */
class LayoutSheetTest {

  private static final JobParts PARTS = DemoJob.parts();

  private static Draft draft() {
    return new JobWriter(PARTS).write();
  }

  private static Address named(Draft draft, String name) {
    return draft.workbook().name(name).flatMap(Workbook.Name::cell).orElseThrow();
  }

  private static void type(Draft draft, String name, double value) {
    Address at = named(draft, name);
    DraftSheet sheet = draft.find(at.sheet()).orElseThrow();
    Entry old = sheet.entry(at.ref()).orElseThrow();
    assertThat(old.formula()).as(name + " is typed").isEmpty();
    sheet.put(at.ref(), new Entry(new Content.Numeric(value), "", old.role(), old.format()));
  }

  /** The cell beside a label on the layout sheet; of several the first. */
  private static Address beside(Draft draft, String label, int column) {
    DraftSheet sheet = draft.find("Layout").orElseThrow();
    return sheet.entries().entrySet().stream()
        .filter(entry -> entry.getKey().column() == 0
            && entry.getValue().stored().equals(new Content.Text(label)))
        .map(entry -> new Address("Layout", new Ref(entry.getKey().row(), column)))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no label " + label));
  }

  private static List<Double> figures(Draft draft, Function<Address, Double> value) {
    List<Double> figures = new ArrayList<>();
    figures.add(value.apply(beside(draft, "Starter: upper edge above the eave edge", 1)));
    figures.add(value.apply(beside(draft, "First course: upper edge above the eave edge", 1)));
    figures.add(value.apply(beside(draft, "Line interval: only ever rounded down", 1)));
    for (int mark = 1; mark <= 7; mark++) {
      figures.add(
          value.apply(beside(draft, "Mark " + mark + " above the first course's upper edge", 1)));
    }
    return figures;
  }

  private static Function<Address, Double> ours(Draft draft) {
    BookValues values = new BookValues(draft.workbook());
    return at -> ((Value.Number) values.value(at)).value();
  }

  /** Without stored values, so that the other program must work everything out. */
  private static Function<Address, Double> theirs(Draft draft, Path folder) {
    for (DraftSheet sheet : draft.sheets()) {
      Map.copyOf(sheet.entries())
          .forEach((ref, entry) -> sheet.put(
              ref,
              entry.formula().isEmpty()
                  ? entry
                  : new Entry(new Content.Blank(), entry.formula(), entry.role(), entry.format())));
    }
    Path file = folder.resolve("edited.xlsx");
    Xlsx.write(draft, file, Existing.REPLACE);
    Workbook book = Xlsx.read(SecondProgram.resave(file)).value().orElseThrow();
    return at -> ((Content.Numeric) book.cell(at).stored()).value();
  }

  /** A shingle 13 1/4 in high at 5 5/8 in over a starter of 7 3/4 in. Common practice, no source. */
  private static final List<Double> USUAL =
      List.of(7.0, 12.5, 28.0, 28.0, 56.0, 84.0, 112.0, 140.0, 168.0, 196.0);

  /** By hand: 1/2 in past the eave leaves 7 1/4 and 12 3/4; 5 courses of 5 in are 25 in. */
  private static final List<Double> SHORTER =
      List.of(7.25, 12.75, 25.0, 25.0, 50.0, 75.0, 100.0, 125.0, 150.0, 175.0);

  private static Draft edited() {
    Draft draft = draft();
    type(draft, "shingle_overhang", 0.5);
    type(draft, "wanted_exposure", 5);
    return draft;
  }

  @Test
  void exposure_and_overhang_are_typed_on_the_sheet_itself() {
    assertThat(List.of("shingle_overhang", "wanted_exposure", "courses_per_line", "tape_step"))
        .allMatch(name -> named(draft(), name).sheet().equals("Layout"));
  }

  @Test
  void typing_exposure_or_overhang_moves_lines_and_marks() {
    assertThat(figures(draft(), ours(draft()))).as("common practice").isEqualTo(USUAL);
    Draft edited = edited();
    assertThat(figures(edited, ours(edited))).as("by hand").isEqualTo(SHORTER);
  }

  @Test
  void another_program_moves_them_alike(@TempDir Path folder) {
    SecondProgram.needed();
    Draft edited = edited();
    assertThat(figures(edited, theirs(edited, folder))).as("by hand").isEqualTo(SHORTER);
  }

  @Test
  void the_exposure_of_the_product_moves_them_too() {
    Draft draft = draft();
    String shingle = PARTS.selection().shingle().orElseThrow().id();
    DraftSheet products = draft.find(named(draft, "catalogue_id").sheet()).orElseThrow();
    int row = products.entries().entrySet().stream()
        .filter(entry -> entry.getValue().stored().equals(new Content.Text(shingle)))
        .mapToInt(entry -> entry.getKey().row())
        .findFirst()
        .orElseThrow();
    int column = named(draft, "catalogue_exposure_in").ref().column();
    products.put(new Ref(row, column), Entry.number(5));
    assertThat(ours(draft).apply(named(draft, "shown_exposure"))).isEqualTo(5.0);
    assertThat(figures(draft, ours(draft)).get(2))
        .as("by hand: 5 courses of 5 in")
        .isEqualTo(25.0);
  }

  @Test
  void pictures_stand_on_rows_without_cells_and_never_over_each_other() {
    DraftSheet sheet = draft().find("Layout").orElseThrow();
    List<Integer> taken = new ArrayList<>();
    sheet.entries().keySet().forEach(ref -> taken.add(ref.row()));
    for (DraftSheet.Picture picture : sheet.pictures()) {
      for (int row = picture.anchor().first().row();
          row <= picture.anchor().last().row();
          row++) {
        assertThat(taken).as(picture.description()).doesNotContain(row);
        taken.add(row);
      }
    }
    long planes = PARTS.planes().size();
    assertThat(sheet.pictures())
        .as("the roof, each plane, and a starter strip for each of the 7 eaves of the demo house")
        .hasSize((int) (1 + planes + 7));
    assertThat(sheet.pictures())
        .extracting(DraftSheet.Picture::description)
        .contains("Roof", "Plane Front", "Starter, plane Front, eave 2 of 2 from the left");
  }

  /** Letter and A4 on their long side hold 504 and 487 points under the margins and the foot; A4 is shrunk to its width. */
  @Test
  void no_picture_is_cut_by_the_end_of_a_page() {
    DraftSheet sheet = draft().find("Layout").orElseThrow();
    double wide =
        5.25 * sheet.widths().values().stream().mapToDouble(width -> width).sum();
    double page = Math.min(504 / Math.min(1, 720 / wide), 487 / Math.min(1, 770 / wide));
    for (DraftSheet.Picture picture : sheet.pictures()) {
      int last = picture.anchor().last().row();
      int begins = sheet.breaks().headSet(picture.anchor().first().row() + 1).last();
      double down = 0;
      for (int row = begins; row <= last; row++) {
        down += sheet.heights().getOrDefault(row, 15.0);
      }
      assertThat(down).as(picture.description()).isLessThanOrEqualTo(page);
    }
  }

  @Test
  void the_same_job_gives_the_same_bytes_with_its_pictures() {
    assertThat(Xlsx.bytes(draft())).isEqualTo(Xlsx.bytes(draft()));
  }

  @Test
  void a_larger_roof_than_can_be_sent_points_to_the_files_instead() {
    List<PlaneNotes> planes = new ArrayList<>();
    for (int plane = 1; plane <= 41; plane++) {
      planes.add(new PlaneNotes(
          "P" + plane,
          new Shape.Rectangle(Length.of(10, 0), Length.of(5, 0)),
          PlaneNotes.Measured.ON_SLOPE,
          Pitch.of(6)));
    }
    JobInput input =
        new JobInput(JobCard.of("Large"), new RoofNotes(planes), DemoJob.input().company());
    JobResult result = JobResult.of(input).value().orElseThrow();
    DraftSheet sheet = JobWorkbook.write(input, result).find("Layout").orElseThrow();
    assertThat(sheet.pictures()).as("41 planes, twelve to a sheet").hasSize(4);
  }

  @Test
  void ends_that_differ_have_their_marks_side_by_side() {
    JobInput input = crooked();
    JobResult result = JobResult.of(input).value().orElseThrow();
    Draft draft = JobWorkbook.write(input, result);
    List<Lines.Marks> marks =
        result.layout().orElseThrow().plans().get(0).lines().marks();
    int first = beside(draft, "Plane Bent: the ends differ", 0).ref().row() + 4;
    for (int mark = 0; mark < marks.get(0).at().size(); mark++) {
      for (int station = 0; station < 2; station++) {
        Address at = new Address("Layout", new Ref(first + mark, station + 1));
        assertThat(ours(draft).apply(at))
            .isEqualTo(marks.get(station).at().get(mark).toInches());
      }
    }
    Address mark = new Address("Layout", new Ref(first, 2));
    assertThat(ours(draft).apply(mark))
        .as("by hand: 28 times 164.5 over 167.5 is 27.4985, on the tape 27 7/16")
        .isEqualTo(27.4375);
  }

  @Test
  void a_metric_job_has_its_marks_courses_and_stations_in_millimetres() {
    JobCard card = new JobCard("Bent", "", "", TapeUnit.METRES);
    JobInput input = new JobInput(card, crooked().roof(), crooked().company());
    JobResult result = JobResult.of(input).value().orElseThrow();
    CoursePlan plan = result.layout().orElseThrow().plans().get(0);
    Draft draft = JobWorkbook.write(input, result);
    Function<Address, Double> value = ours(draft);
    Address mark = beside(draft, "Mark 2 above the first course's upper edge", 2);
    assertThat(value.apply(mark))
        .as("by hand: 5 courses of 142.875, in fives, twice")
        .isCloseTo(1420, within(1e-6));
    int heading = beside(draft, "Courses on each plane, mm", 0).ref().row();
    assertThat(value.apply(new Address("Layout", new Ref(heading + 1, 1))))
        .as("by hand: 15 ft and 3/4 in")
        .isCloseTo(180.75 * 25.4, within(1e-6));
    assertThat(value.apply(new Address("Layout", new Ref(heading + 1, 2))))
        .isEqualTo(plan.courses());
    int block = beside(draft, "Plane Bent: the ends differ", 0).ref().row();
    assertThat(value.apply(new Address("Layout", new Ref(block + 2, 2))))
        .as("by hand: 14 ft 9 in")
        .isCloseTo(177 * 25.4, within(1e-6));
    assertThat(value.apply(new Address("Layout", new Ref(block + 4, 2))))
        .as("by hand: 710 mm times 164.5 over 167.5 is 697.28, on the tape 697")
        .isCloseTo(697, within(1e-6));
  }

  private static JobInput crooked() {
    PlaneNotes bent = new PlaneNotes(
            "Bent",
            new Shape.Rectangle(Length.of(30, 0), Length.of(15, 0)),
            PlaneNotes.Measured.ON_SLOPE,
            Pitch.of(6))
        .with(PlaneNotes.SideNotes.of("left", EdgeKind.RAKE).taped(Length.of(15, 0)))
        .with(PlaneNotes.SideNotes.of("right", EdgeKind.RAKE).taped(Length.of(14, 9)));
    return new JobInput(JobCard.of("Bent"), RoofNotes.of(bent), DemoJob.input().company());
  }

  @Test
  void an_eave_that_wavers_is_judged_at_every_station() {
    Draft draft = draft();
    DraftSheet sheet = draft.find("Layout").orElseThrow();
    int row = beside(draft, "From the snapped starter line down to the eave edge, inches", 0)
        .ref()
        .row();
    sheet.put(new Ref(row, 1), Entry.number(7));
    sheet.put(new Ref(row, 2), Entry.number(6.5));
    sheet.put(new Ref(row, 3), Entry.number(7.625));
    BookValues values = new BookValues(draft.workbook());
    Function<Integer, Value> says = at -> values.value(new Address("Layout", new Ref(row + 2, at)));
    assertThat(says.apply(1)).as("by hand: 7 3/4 less 7 is 3/4").isEqualTo(new Value.Text("yes"));
    assertThat(says.apply(2)).as("1 1/4, over 1").isEqualTo(new Value.Text("too much"));
    assertThat(says.apply(3)).as("1/8, under 1/4").isEqualTo(new Value.Text("too little"));
    assertThat(values.value(new Address("Layout", new Ref(row + 3, 2))))
        .as("1 1/8 between them, the limits 3/4")
        .isEqualTo(new Value.Text("no straight line will do: straighten the edge metal first"));
  }

  @Test
  void courses_of_each_plane_are_those_of_the_layout_before_and_after_a_change() {
    agrees(draft());
    agrees(edited());
  }

  private static void agrees(Draft draft) {
    BoundJob job =
        JobWorkbook.read(draft.workbook(), "job.xlsx", PARTS.rulebook()).value().orElseThrow();
    JobResult result = JobResult.of(job.input()).value().orElseThrow();
    Function<Address, Double> value = ours(draft);
    DraftSheet sheet = draft.find("Layout").orElseThrow();
    int heading = beside(draft, "Courses on each plane, inches", 0).ref().row();
    List<CoursePlan> plans = result.layout().orElseThrow().plans();
    for (int plane = 0; plane < plans.size(); plane++) {
      CoursePlan plan = plans.get(plane);
      int row = heading + 1 + plane;
      Function<Integer, Double> cell = at -> value.apply(new Address("Layout", new Ref(row, at)));
      String name = plan.plane().id();
      assertThat(sheet.entry(new Ref(row, 0)).map(Entry::stored))
          .isEqualTo(Optional.of(new Content.Text(name)));
      assertThat(cell.apply(1)).as(name).isCloseTo(plan.reach().covered().toInches(), within(1e-3));
      assertThat(cell.apply(2)).as(name).isEqualTo(plan.courses());
      assertThat(cell.apply(3))
          .as(name)
          .isEqualTo(plan.lines().marks().get(0).at().size());
      assertThat(cell.apply(4))
          .as(name)
          .isCloseTo(plan.reach().lastCourse().inches(), within(1e-3));
      assertThat(cell.apply(5)).as(name).isCloseTo(plan.reach().lost().inches(), within(1e-9));
      assertThat(cell.apply(6)).as(name).isEqualTo(plan.reach().extra());
      assertThat(cell.apply(8))
          .as(name)
          .isCloseTo(plan.reach().evenExposure().inches(), within(1e-4));
    }
  }
}
