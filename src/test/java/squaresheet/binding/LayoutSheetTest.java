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
import squaresheet.formula.Value;
import squaresheet.job.JobResult;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;
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
