package squaresheet.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import squaresheet.finding.Read;
import squaresheet.units.Area;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** Whole roofs over plans whose areas and edges are worked by hand. */
class RoofFormsTest {

  private static final Length MAIN = Length.of(60, 0);
  private static final Length DEEP = Length.of(30, 0);

  @Test
  void a_gable_has_one_ridge_two_eaves_and_four_rakes() {
    Roof roof = clean(RoofForms.gable(Length.of(40, 0), Length.of(24, 0), Pitch.of(5)));
    assertThat(feet(roof, EdgeKind.RIDGE)).isEqualTo(40);
    assertThat(feet(roof, EdgeKind.EAVE)).isEqualTo(80);
    assertThat(roof.count(EdgeKind.RAKE)).isEqualTo(4);
    assertThat(feet(roof, EdgeKind.RAKE))
        .as("4 rakes of 12 ft x 13/12")
        .isCloseTo(52, within(1e-9));
    assertThat(roof.slopedArea().squareFeet()).as("40 x 26").isCloseTo(1040, within(1e-6));
  }

  @Test
  void a_shed_ridge_needs_no_partner() {
    Roof roof = clean(RoofForms.shed(Length.of(20, 0), Length.of(12, 0), Pitch.of(5)));
    assertThat(feet(roof, EdgeKind.RIDGE)).isEqualTo(20);
    assertThat(roof.sharedEdges()).isEmpty();
  }

  @Test
  void a_hip_roof_has_four_hips_and_the_rest_of_its_length_as_ridge() {
    Roof roof = clean(RoofForms.hip(MAIN, DEEP, Pitch.of(6)));
    assertThat(roof.count(EdgeKind.HIP)).isEqualTo(4);
    assertThat(feet(roof, EdgeKind.HIP)).as("4 x 15 x 1.5").isCloseTo(90, within(1e-4));
    assertThat(feet(roof, EdgeKind.RIDGE)).as("60 - 30").isEqualTo(30);
    assertClosed(roof, 1800);
  }

  @Test
  void a_square_hip_roof_comes_to_a_point() {
    Roof roof = clean(RoofForms.hip(DEEP, DEEP, Pitch.of(6)));
    assertThat(feet(roof, EdgeKind.RIDGE)).isZero();
    assertThat(roof.count(EdgeKind.HIP)).isEqualTo(4);
    assertClosed(roof, 900);
  }

  @Test
  void steeper_ends_leave_a_longer_ridge() {
    Roof roof = clean(RoofForms.hip(MAIN, DEEP, Pitch.of(6), Pitch.of(12)));
    assertThat(feet(roof, EdgeKind.RIDGE)).as("60 - 2 x 7.5").isEqualTo(45);
    assertThat(feet(roof, EdgeKind.HIP))
        .as("4 diagonals of 15, 7.5 and 7.5 ft")
        .isCloseTo(4 * Math.sqrt(15 * 15 + 7.5 * 7.5 + 7.5 * 7.5), within(1e-4));
    assertClosed(roof, 1800);
  }

  @Test
  void an_ell_has_five_hips_and_one_valley() {
    Roof roof = clean(RoofForms.ell(MAIN, DEEP, Length.of(20, 0), Pitch.of(6)));
    assertThat(roof.count(EdgeKind.HIP)).isEqualTo(5);
    assertThat(roof.count(EdgeKind.VALLEY)).isEqualTo(1);
    assertThat(feet(roof, EdgeKind.VALLEY)).as("15 x 1.5").isCloseTo(22.5, within(1e-4));
    assertThat(feet(roof, EdgeKind.RIDGE)).as("30 + 20").isEqualTo(50);
    assertClosed(roof, 60 * 30 + 20 * 30);
  }

  @Test
  void a_hipped_wing_adds_two_hips_two_valleys_and_its_ridge() {
    Roof roof = clean(RoofForms.hipWithWing(wing(true), Pitch.of(6)));
    assertThat(roof.count(EdgeKind.HIP)).isEqualTo(6);
    assertThat(roof.count(EdgeKind.VALLEY)).isEqualTo(2);
    assertThat(feet(roof, EdgeKind.VALLEY)).as("2 x 10 x 1.5").isCloseTo(30, within(1e-4));
    assertThat(feet(roof, EdgeKind.RIDGE)).as("30 + 12").isEqualTo(42);
    assertClosed(roof, 60 * 30 + 20 * 12);
  }

  @Test
  void a_gabled_wing_runs_its_ridge_to_the_wall() {
    Roof roof = clean(RoofForms.hipWithWing(wing(false), Pitch.of(6)));
    assertThat(roof.count(EdgeKind.HIP)).isEqualTo(4);
    assertThat(feet(roof, EdgeKind.RIDGE)).as("30 + 12 + 10").isEqualTo(52);
    assertThat(feet(roof, EdgeKind.EAVE)).as("180 - 20 + 24").isEqualTo(184);
    assertClosed(roof, 60 * 30 + 20 * 12);
  }

  private static RoofForms.WingPlan wing(boolean hipped) {
    return new RoofForms.WingPlan(
        MAIN, DEEP, Length.of(8, 0), Length.of(20, 0), Length.of(12, 0), hipped);
  }

  private static void assertClosed(Roof roof, double footprint) {
    assertThat(roof.planArea().squareFeet()).isCloseTo(footprint, within(footprint * 1e-6));
    assertThat(ClosedForm.footprint(roof, new Area.Plan(footprint)).holds()).isTrue();
    assertThat(ClosedForm.of(roof)).isNotEmpty().allMatch(ClosedForm::holds);
    assertThat(ClosedForm.ofSquareCorners(roof)).isNotEmpty().allMatch(ClosedForm::holds);
  }

  private static double feet(Roof roof, EdgeKind kind) {
    return roof.length(kind).toFeet();
  }

  private static Roof clean(RoofNotes notes) {
    Read<Roof> read = Roof.resolve(notes);
    assertThat(read.findings()).isEmpty();
    return read.value().orElseThrow();
  }
}
