package squaresheet.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.geometry.Outline;
import squaresheet.geometry.Point;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.roof.PlaneNotes.Meets;
import squaresheet.roof.PlaneNotes.OpeningNotes;
import squaresheet.roof.PlaneNotes.SideNotes;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

class PlaneTest {

  /** A right triangle of 3, 4 and 5 ft, listed clockwise: rake, hip, eave. */
  @Test
  void sides_of_a_clockwise_polygon_keep_their_names() {
    Shape shape = new Shape.Polygon(List.of(at(0, 0), at(0, 4), at(3, 0)));
    PlaneNotes notes = plane(shape, 6)
        .with(SideNotes.of("side 1", EdgeKind.RAKE))
        .with(SideNotes.of("side 2", EdgeKind.HIP).with(new Meets.Nothing()));
    Plane plane = resolved(notes);
    assertThat(plane.side("side 1").orElseThrow().drawn().toFeet()).isEqualTo(4);
    assertThat(plane.side("side 2").orElseThrow().drawn().toFeet()).isEqualTo(5);
    assertThat(plane.side("side 2").orElseThrow().kind()).isEqualTo(EdgeKind.HIP);
    assertThat(plane.side("side 3").orElseThrow().kind()).isEqualTo(EdgeKind.EAVE);
    assertThat(plane.outline().doubledArea()).isPositive();
  }

  @Test
  void in_plan_only_lengths_across_the_slope_are_stretched() {
    PlaneNotes notes = new PlaneNotes(
            "A", new Shape.Rectangle(feet(26), feet(24)), Measured.IN_PLAN, Pitch.of(5))
        .with(SideNotes.of("top", EdgeKind.HEADWALL))
        .with(OpeningNotes.of("s", Opening.Kind.SKYLIGHT, feet(2), feet(12)).at(feet(3), feet(6)));
    Plane plane = resolved(notes);
    assertThat(plane.length(EdgeKind.RAKE).toFeet()).as("2 x 24 x 13/12").isEqualTo(52);
    assertThat(plane.length(EdgeKind.EAVE).toFeet()).isEqualTo(26);
    Opening skylight = plane.openings().get(0);
    assertThat(skylight.outline())
        .as("6 and 12 ft x 13/12")
        .isEqualTo(Outline.rectangle(feet(2), feet(13)).movedBy(feet(3), Length.of(6, 6)));
    assertThat(skylight.height().nearest()).isEqualTo(feet(13));
    assertThat(skylight.width()).isEqualTo(feet(2));
    assertThat(plane.planArea().squareFeet()).isCloseTo(26 * 24 - 24, within(1e-9));
    assertThat(plane.grossPlanArea().squareFeet()).isCloseTo(26 * 24, within(1e-9));
  }

  /** By hand: 10 ft 1 in of plan at 7:12, times the square root of 193 over 12, falls on no 1/320 mm. */
  @Test
  void areas_and_lengths_follow_from_the_measures_and_only_the_outline_is_rounded() {
    double factor = Math.sqrt(193) / 12;
    double up = (10 + 1 / 12.0) * factor;
    Length across = Length.of(10, 1);
    Plane rectangle = inPlan(new Shape.Rectangle(feet(30), across));
    assertThat(rectangle.grossArea().squareFeet()).isCloseTo(30 * up, within(1e-12));
    assertThat(rectangle.height().toFeet()).isCloseTo(up, within(1e-13));
    assertThat(rectangle.length(EdgeKind.RAKE).toFeet()).isCloseTo(2 * up, within(1e-13));
    assertThat(rectangle.outline().top())
        .isEqualTo(across.toDerived().times(factor).nearest());

    Plane triangle = inPlan(new Shape.Triangle(new Length(feet(12).units() + 1), across));
    assertThat(triangle.side("left").orElseThrow().drawn().inches())
        .as("its point above the middle of an eave of 12 ft and 1/320 mm")
        .isCloseTo(Math.hypot(72 + 0.5 / 8128, up * 12), within(1e-11));

    Plane polygon = inPlan(new Shape.Polygon(
        List.of(Point.ORIGIN, new Point(feet(30), Length.ZERO), new Point(feet(12), across))));
    assertThat(polygon.grossArea().squareFeet()).isCloseTo(15 * up, within(1e-12));
  }

  private static Plane inPlan(Shape shape) {
    PlaneNotes notes = new PlaneNotes("A", shape, Measured.IN_PLAN, Pitch.of(7));
    return Roof.resolve(RoofNotes.of(notes)).value().orElseThrow().planes().get(0);
  }

  @Test
  void the_tape_goes_before_the_shape_in_lengths() {
    PlaneNotes notes = plane(new Shape.Triangle(feet(6), feet(4)), 6)
        .with(SideNotes.of("left", EdgeKind.HIP).with(new Meets.Nothing()).taped(Length.of(5, 1)))
        .with(SideNotes.of("right", EdgeKind.HIP).with(new Meets.Nothing()));
    assertThat(resolved(notes).length(EdgeKind.HIP).inches()).isEqualTo(61 + 60);
  }

  @Test
  void a_shape_leans_as_its_usual_kinds_say() {
    assertThat(new Shape.Trapezoid(feet(20), feet(10), feet(5)).usualKinds())
        .containsExactly(EdgeKind.EAVE, EdgeKind.HIP, EdgeKind.RIDGE, EdgeKind.HIP);
    assertThat(new Shape.Trapezoid(feet(10), feet(20), feet(5)).usualKinds())
        .containsExactly(EdgeKind.EAVE, EdgeKind.VALLEY, EdgeKind.RIDGE, EdgeKind.VALLEY);
    assertThat(new Shape.Trapezoid(feet(10), feet(7), feet(5), Optional.of(feet(3))).usualKinds())
        .containsExactly(EdgeKind.EAVE, EdgeKind.RAKE, EdgeKind.RIDGE, EdgeKind.HIP);
    assertThat(new Shape.Parallelogram(feet(10), feet(7), feet(-3)).usualKinds())
        .containsExactly(EdgeKind.EAVE, EdgeKind.HIP, EdgeKind.RIDGE, EdgeKind.VALLEY);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # pitch | band           | source
      0:12    | BELOW_2        | model residential code R905.2.2: shingles from 2:12
      1.99:12 | BELOW_2        | model residential code R905.2.2: shingles from 2:12
      2:12    | FROM_2_BELOW_4 | model residential code R905.2.2: doubled underlayment from 2:12 to 4:12
      3.99:12 | FROM_2_BELOW_4 | model residential code R905.2.2: doubled underlayment from 2:12 to 4:12
      4:12    | FROM_4         | model residential code R905.2.2: single from 4:12
      24:12   | FROM_4         | model residential code R905.2.2: single from 4:12
      """)
  void slope_bands_begin_at_two_and_at_four(String pitch, SlopeBand band, String source) {
    assertThat(SlopeBand.of(Pitch.parse(pitch))).as(source).isEqualTo(band);
  }

  @Test
  void many_planes_that_name_nobody_are_paired_in_good_time() {
    List<PlaneNotes> planes = IntStream.range(0, 30)
        .boxed()
        .flatMap(house -> RoofForms.hip(feet(60), feet(30), Pitch.of(6)).planes().stream()
            .map(plane ->
                new PlaneNotes(plane.id() + house, plane.shape(), Measured.IN_PLAN, plane.pitch())))
        .toList();
    Roof roof = Roof.resolve(new RoofNotes(planes)).value().orElseThrow();
    assertThat(roof.count(EdgeKind.HIP)).isEqualTo(120);
    assertThat(roof.count(EdgeKind.RIDGE)).isEqualTo(30);
  }

  private static PlaneNotes plane(Shape shape, int rise) {
    return new PlaneNotes("A", shape, Measured.ON_SLOPE, Pitch.of(rise));
  }

  private static Plane resolved(PlaneNotes notes) {
    var read = Roof.resolve(RoofNotes.of(notes));
    assertThat(read.findings()).isEmpty();
    return read.value().orElseThrow().planes().get(0);
  }

  private static Length feet(long feet) {
    return Length.of(feet, 0);
  }

  private static Point at(long right, long up) {
    return new Point(feet(right), feet(up));
  }
}
