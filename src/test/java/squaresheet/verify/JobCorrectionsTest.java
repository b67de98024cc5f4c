package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.binding.JobWorkbook;
import squaresheet.binding.Moved;
import squaresheet.formula.Calculation;
import squaresheet.formula.Value;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.roof.RoofForms;
import squaresheet.roof.RoofNotes;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** Putting job workbooks of our own right: rules come back where they were typed over, and nothing else is touched. */
class JobCorrectionsTest {

  /** How many random jobs are tried: {@code -Dsquaresheet.jobs=200} in a long run. */
  private static final int JOBS = Integer.getInteger("squaresheet.jobs", 2);

  private static Corrections corrections(Workbook book, String... taken) {
    return Corrections.of(
        book, each -> Verify.of(each, "job.xlsx", Rulebook.standard()), cell -> List.of(taken)
            .contains(cell.toString()));
  }

  @TestFactory
  Stream<DynamicTest> a_random_job_in_order_stays_as_it_is() {
    long seed = System.nanoTime() % 100_000;
    return Stream.iterate(seed, each -> each + 1)
        .limit(JOBS)
        .map(each -> DynamicTest.dynamicTest("job " + each, () -> {
          JobInput input = DemoWorkbook.job(roof(new Random(each)), Rulebook.standard());
          Workbook book = JobWorkbook.write(input, JobResult.of(input).value().orElseThrow())
              .workbook();
          Corrections corrections = corrections(settled(book, List.of()));
          assertThat(corrections.changes()).isEmpty();
          assertThat(corrections.edits()).isEmpty();
        }));
  }

  private static RoofNotes roof(Random random) {
    Length wide = Length.ofInches(180 * 16 + random.nextInt(300 * 16), 16);
    Length eave = wide.plus(Length.ofInches(24 * 16 + random.nextInt(300 * 16), 16));
    Pitch pitch = Pitch.of(3 + random.nextInt(9));
    return switch (random.nextInt(4)) {
      case 0 -> RoofForms.shed(eave, wide, pitch);
      case 1 -> RoofForms.gable(eave, wide, pitch);
      case 2 -> RoofForms.hip(eave, wide, pitch);
      default -> RoofForms.ell(eave, wide, wide, pitch);
    };
  }

  private static Workbook settled(Workbook book, List<Edit> edits) {
    return book.after(Calculation.settled(book, edits));
  }

  /** Values pasted over a whole column, as they were or a little off: the formulas that were there come back. */
  @ParameterizedTest
  @CsvSource({"net_sloped_area, 1.02", "plane_squares, 1", "rake_metal_run, 1"})
  void a_column_typed_over_as_a_whole_gets_its_rules_back(String rule, double times) {
    DemoWorkbook demo = new DemoWorkbook();
    Workbook clean = demo.saved();
    overtyped(demo, clean, rule, times);
    Corrections corrections = corrections(demo.saved());
    assertThat(corrections.left()).isEmpty();
    isAsBefore(demo.saved().after(corrections.edits()), clean);
    assertThat(corrections.verdict().isPassed()).isTrue();
  }

  private static void overtyped(DemoWorkbook demo, Workbook clean, String rule, double times) {
    Book book = Book.of("job.xlsx", clean);
    int rows = clean.name(rule).orElseThrow().block().orElseThrow().rows();
    for (int row = 0; row < rows; row++) {
      Address at = demo.at(rule, row);
      if (clean.cell(at).isFormula() && book.value(at) instanceof Value.Number number) {
        demo.type(at, number.value() * times);
      }
    }
  }

  private static void isAsBefore(Workbook after, Workbook clean) {
    List<String> other = new ArrayList<>();
    clean.sheets().forEach(sheet -> sheet
        .cells()
        .filter(placed -> placed.cell().isFormula())
        .map(placed -> new Address(sheet.name(), placed.ref()))
        .filter(at -> !after.cell(at).formula().equals(clean.cell(at).formula()))
        .forEach(at -> other.add(at.toString())));
    assertThat(other).isEmpty();
  }

  @Test
  void a_rule_comes_back_where_rows_and_sheets_have_moved() {
    DemoWorkbook demo = new DemoWorkbook();
    Workbook moved =
        new Moved(new Moved(demo.saved()).insertRow("Planes", 2)).rename("Planes", "Roof planes");
    Address area = demo.at("net_sloped_area", 1);
    Address at = new Address("Roof planes", area.ref().plus(1, 0));
    Workbook slipped = settled(moved, List.of(new Edit.SetContent(at, new Content.Numeric(480))));
    Corrections corrections = corrections(slipped);
    assertThat(corrections.changes()).extracting(Corrections.Change::cell).containsExactly(at);
    assertThat(slipped.after(corrections.edits()).cell(at).formula())
        .isEqualTo(moved.cell(at).formula());
  }

  @Test
  void what_changes_the_total_by_more_than_a_quarter_is_done_only_where_a_person_takes_it() {
    DemoWorkbook demo = new DemoWorkbook();
    Address area = demo.at("net_sloped_area", 0);
    demo.type(area, 9000);
    demo.type(demo.at("net_sloped_area", 1), 480);
    Corrections corrections = corrections(demo.saved());
    assertThat(corrections.changes())
        .extracting(Corrections.Change::cell)
        .containsExactly(demo.at("net_sloped_area", 1));
    assertThat(corrections.left()).singleElement().satisfies(left -> {
      assertThat(left.change().cell()).isEqualTo(area);
      assertThat(left.why()).startsWith("'Total' (").contains(" would be ", " instead of ");
      assertThat(left.isNeeded()).isTrue();
    });
    Corrections taken = corrections(demo.saved(), area.toString());
    assertThat(taken.changes()).hasSize(2);
    assertThat(taken.left()).isEmpty();
    assertThat(taken.verdict().isPassed()).isTrue();
  }

  @Test
  void a_rate_typed_wrongly_is_proposed_and_left() {
    DemoWorkbook demo = new DemoWorkbook();
    Address waste = demo.at("typed_waste", 0);
    demo.type(waste, 10);
    Corrections corrections = corrections(demo.saved());
    assertThat(corrections.changes()).isEmpty();
    assertThat(corrections.left())
        .singleElement()
        .satisfies(left -> assertThat(left.change().cell()).isEqualTo(waste));
    assertThat(corrections(demo.saved(), waste.toString()).verdict().isPassed()).isTrue();
  }
}
