package squaresheet.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import squaresheet.geometry.Point;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.roof.PlaneNotes.OpeningNotes;
import squaresheet.units.Area;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** Published problems about whole roofs, each built plane by plane. Sources stand in the table of worked examples. */
class WholeRoofExamplesTest {

  private static final Offset<Double> TO_THE_UNIT = within(1e-3);

  /** Six hips, two valleys: a wing as wide as the main roof comes out of the middle of its front. No partner is named. */
  @Test
  void an_eight_cornered_hip_roof_has_six_hips_and_two_valleys() throws IOException {
    Length run = feet(15);
    RoofNotes notes = RoofNotes.of(
        hipRoofPlane(
                "back",
                new Shape.Polygon(List.of(at(0, 0), at(60, 0), at(45, 15), at(30, 15), at(15, 15))))
            .with(PlaneNotes.SideNotes.of("side 2", EdgeKind.HIP))
            .with(PlaneNotes.SideNotes.of("side 5", EdgeKind.HIP)),
        hipRoofPlane("left end", new Shape.Triangle(feet(30), run)),
        hipRoofPlane("right end", new Shape.Triangle(feet(30), run)),
        hipRoofPlane("front left", new Shape.Parallelogram(run, run, run)),
        hipRoofPlane("front right", new Shape.Parallelogram(run, run, run.negated())),
        hipRoofPlane("wing left", new Shape.Parallelogram(run, run, run.negated())),
        hipRoofPlane("wing right", new Shape.Parallelogram(run, run, run)),
        hipRoofPlane("wing end", new Shape.Triangle(feet(30), run)));
    Roof roof = Roof.resolve(notes).value().orElseThrow();
    assertThat(roof.count(EdgeKind.HIP)).isEqualTo(6);
    assertThat(roof.count(EdgeKind.VALLEY)).isEqualTo(2);
    assertThat(roof.length(EdgeKind.VALLEY).toFeet() / 2)
        .isCloseTo(WorkedExamplesTest.exact("WE-LHIP-30LB-05"), TO_THE_UNIT);
    assertThat(roof.length(EdgeKind.HIP).plus(roof.length(EdgeKind.VALLEY)).toFeet())
        .isCloseTo(WorkedExamplesTest.exact("WE-LHIP-30LB-06"), TO_THE_UNIT);
    assertThat(roof.planArea().squareFeet())
        .isCloseTo(WorkedExamplesTest.exact("WE-LHIP-30LB-01"), within(0.01));
    assertThat(roof.length(EdgeKind.RIDGE).toFeet())
        .as("by its geometry, where the text has 40 + 15")
        .isCloseTo(45, TO_THE_UNIT);
  }

  @Test
  void the_perimeter_of_a_small_gable_is_its_eaves_and_rakes() throws IOException {
    Shape half = new Shape.Rectangle(feet(10), Length.ofInches(102));
    Roof roof = Roof.resolve(RoofNotes.of(onSlope("front", half), onSlope("back", half)))
        .value()
        .orElseThrow();
    assertThat(roof.length(EdgeKind.EAVE).plus(roof.length(EdgeKind.RAKE)).toFeet())
        .isCloseTo(WorkedExamplesTest.exact("WE-HC-SHED-02"), TO_THE_UNIT);
  }

  @Test
  void two_planes_of_a_gable_are_twice_eave_times_rake() throws IOException {
    Shape half = new Shape.Rectangle(feet(36), feet(15));
    Roof roof = Roof.resolve(RoofNotes.of(onSlope("front", half), onSlope("back", half)))
        .value()
        .orElseThrow();
    assertThat(roof.slopedArea().squareFeet())
        .isCloseTo(WorkedExamplesTest.exact("WE-WOOD-36x15-01"), TO_THE_UNIT);
  }

  /** The numbers are from memory in the table; here they only show that openings and two pitches add up as there. */
  @Test
  void a_main_roof_with_an_ell_and_a_chimney_has_its_net_plan() throws IOException {
    PlaneNotes main = inPlan("main", new Shape.Rectangle(feet(26), feet(30)), 9)
        .with(new OpeningNotes(
            "ell",
            Opening.Kind.OTHER,
            new Shape.Triangle(feet(16), feet(5)),
            Optional.of(at(5, 0))))
        .with(OpeningNotes.of("stack", Opening.Kind.CHIMNEY, feet(4), feet(4)));
    Roof roof = Roof.resolve(RoofNotes.of(
            main,
            inPlan("rest of main", new Shape.Rectangle(feet(19), feet(30)), 9),
            inPlan("ell", new Shape.Rectangle(feet(20), feet(30)), 6),
            inPlan("ell on main", new Shape.Triangle(feet(16), feet(5)), 6)))
        .value()
        .orElseThrow();
    Plane cut = roof.plane("main").orElseThrow();
    Area.Plan overlap = cut.pitch().plan(cut.openings().get(0).slopedArea());
    Area.Plan chimney = cut.pitch().plan(cut.openings().get(1).slopedArea());
    Area.Plan net = cut.planArea().plus(roof.plane("rest of main").orElseThrow().planArea());
    Area.Plan ell = roof.plane("ell")
        .orElseThrow()
        .planArea()
        .plus(roof.plane("ell on main").orElseThrow().planArea());
    assertThat(overlap.squareFeet())
        .isCloseTo(WorkedExamplesTest.exact("WE-MFR-ELL-02"), TO_THE_UNIT);
    assertThat(chimney.squareFeet())
        .isCloseTo(WorkedExamplesTest.exact("WE-MFR-ELL-03"), TO_THE_UNIT);
    assertThat(net.squareFeet()).isCloseTo(WorkedExamplesTest.exact("WE-MFR-ELL-04"), TO_THE_UNIT);
    assertThat(ell.squareFeet()).isCloseTo(WorkedExamplesTest.exact("WE-MFR-ELL-05"), TO_THE_UNIT);
  }

  /**
   * Early carpentry text (MF-083): hip roof area = eave perimeter × common rafter / 2. Exact where the planes come to a point;
   * over an oblong it leaves out ridge × common rafter, for the long planes are trapezoids.
   */
  @Property(tries = 200)
  void half_the_perimeter_times_the_rafter_is_the_area_of_a_pointed_hip_roof(
      @ForAll @IntRange(min = 2, max = 80) int width,
      @ForAll @IntRange(min = 0, max = 80) int more,
      @ForAll @IntRange(min = 1, max = 24) int rise) {
    Roof roof = Roof.resolve(RoofForms.hip(feet(width + more), feet(width), Pitch.of(rise)))
        .value()
        .orElseThrow();
    double rafter = width / 2.0 * Pitch.of(rise).factor();
    double shortcut = roof.length(EdgeKind.EAVE).toFeet() * rafter / 2;
    double area = roof.slopedArea().squareFeet();
    assertThat(shortcut + more * rafter).isCloseTo(area, within(area * 1e-5));
    assertThat(roof.length(EdgeKind.RIDGE).toFeet()).isCloseTo(more, TO_THE_UNIT);
  }

  private static PlaneNotes hipRoofPlane(String id, Shape shape) {
    return inPlan(id, shape, 6);
  }

  private static PlaneNotes inPlan(String id, Shape shape, int rise) {
    return new PlaneNotes(id, shape, Measured.IN_PLAN, Pitch.of(rise));
  }

  private static PlaneNotes onSlope(String id, Shape shape) {
    return new PlaneNotes(id, shape, Measured.ON_SLOPE, Pitch.of(6));
  }

  private static Length feet(long feet) {
    return Length.of(feet, 0);
  }

  private static Point at(long right, long up) {
    return new Point(feet(right), feet(up));
  }
}
