package squaresheet.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import squaresheet.geometry.Fraction;
import squaresheet.geometry.Region;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.roof.PlaneNotes.Meets;
import squaresheet.roof.PlaneNotes.SideNotes;
import squaresheet.units.Area;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** Relations that hold for every roof. Lengths are in 1/320 mm; 3,901,440 of them are 40 ft. */
class RoofPropertiesTest {

  private static final long FORTY_FEET = 3_901_440;
  /** Three corners rounded to 1/320 mm each move a hip by less than 0.001 in. */
  private static final double ROUNDED = 0.001;

  @Property(tries = 300)
  void a_hip_is_as_long_on_both_its_planes(
      @ForAll @LongRange(min = 100_000, max = FORTY_FEET) long width,
      @ForAll @LongRange(min = 0, max = FORTY_FEET) long more,
      @ForAll @IntRange(min = 1, max = 24) int sides,
      @ForAll @IntRange(min = 1, max = 24) int ends) {
    Optional<Roof> built = hip(width * 2, more, sides, ends);
    Assume.that(built.isPresent());
    Roof roof = built.get();
    assertThat(roof.sharedEdges()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(roof.sharedEdges())
        .allMatch(edge -> edge.disagreement().inches() < ROUNDED, "sides agree");
    assertThat(ClosedForm.of(roof)).allMatch(ClosedForm::holds);
    assertThat(ClosedForm.ofSquareCorners(roof)).allMatch(ClosedForm::holds);
  }

  @Property(tries = 300)
  void plan_areas_close_to_the_footprint(
      @ForAll @LongRange(min = 100_000, max = FORTY_FEET) long width,
      @ForAll @LongRange(min = 0, max = FORTY_FEET) long more,
      @ForAll @IntRange(min = 1, max = 24) int sides,
      @ForAll @IntRange(min = 1, max = 24) int ends) {
    Optional<Roof> built = hip(width * 2, more, sides, ends);
    Assume.that(built.isPresent());
    double footprint = new Length(width * 2 + more).toFeet() * new Length(width * 2).toFeet();
    assertThat(built.get().planArea().squareFeet()).isCloseTo(footprint, within(footprint * 1e-4));
    assertThat(ClosedForm.footprint(built.get(), new Area.Plan(footprint)).holds())
        .isTrue();
  }

  @Property(tries = 200)
  void a_wing_closes_to_the_footprint_and_its_valleys_agree(
      @ForAll @LongRange(min = 200_000, max = FORTY_FEET) long wingRun,
      @ForAll @LongRange(min = 1_000, max = FORTY_FEET) long wider,
      @ForAll @LongRange(min = 1_000, max = FORTY_FEET) long start,
      @ForAll @LongRange(min = 1_000, max = FORTY_FEET) long wing,
      @ForAll @IntRange(min = 1, max = 24) int rise,
      @ForAll boolean hipped) {
    long width = 2 * (wingRun + wider);
    long length = start + 2 * wingRun + width;
    RoofForms.WingPlan plan = new RoofForms.WingPlan(
        new Length(length),
        new Length(width),
        new Length(start),
        new Length(2 * wingRun),
        new Length(wing),
        hipped);
    Roof roof = resolved(RoofForms.hipWithWing(plan, Pitch.of(rise)));
    double footprint = new Length(length).toFeet() * new Length(width).toFeet()
        + new Length(wing).toFeet() * new Length(2 * wingRun).toFeet();
    assertThat(roof.planArea().squareFeet()).isCloseTo(footprint, within(footprint * 1e-4));
    assertThat(roof.sharedEdges())
        .allMatch(edge -> edge.disagreement().inches() < ROUNDED, "sides agree");
    assertThat(ClosedForm.of(roof)).allMatch(ClosedForm::holds);
  }

  @Property(tries = 300)
  void a_mirror_image_has_the_same_area(@ForAll("planes") Plane plane) {
    assertThat(plane.outline().mirrored().doubledArea())
        .isEqualTo(plane.outline().doubledArea());
  }

  @Property(tries = 300)
  void a_plane_split_along_a_course_line_makes_the_whole(
      @ForAll("planes") Plane plane, @ForAll @IntRange(min = 1, max = 99) int percent) {
    Region region = plane.region();
    Fraction top = Fraction.of(region.outline().top());
    Fraction line = top.times(Fraction.of(percent, 100));
    Fraction below = region.doubledAreaOver(Fraction.of(0), line);
    Fraction above = region.doubledAreaOver(line, top);
    assertThat(below.signum()).isPositive();
    assertThat(below.plus(above)).isEqualTo(Fraction.of(region.doubledArea()));
  }

  @Property(tries = 300)
  void a_longer_eave_or_height_never_has_less_area(
      @ForAll @LongRange(min = 1, max = FORTY_FEET) long eave,
      @ForAll @LongRange(min = 1, max = FORTY_FEET) long height,
      @ForAll @LongRange(min = 0, max = 100_000) long more,
      @ForAll @IntRange(min = 0, max = 24) int rise) {
    for (Shape shape : List.of(
        new Shape.Rectangle(new Length(eave), new Length(height)),
        new Shape.Triangle(new Length(eave), new Length(height)),
        new Shape.Trapezoid(new Length(eave), new Length(height), new Length(height)))) {
      for (String name : shape.lengths().keySet()) {
        Shape larger = shape.with(name, shape.lengths().get(name).plus(new Length(more)));
        assertThat(area(larger, rise)).isGreaterThanOrEqualTo(area(shape, rise));
      }
    }
  }

  @Property(tries = 300)
  void the_area_lies_within_its_bounds_whatever_the_readings_are_off(
      @ForAll @LongRange(min = 100_000, max = FORTY_FEET) long eave,
      @ForAll @LongRange(min = 100_000, max = FORTY_FEET) long ridge,
      @ForAll @LongRange(min = 100_000, max = FORTY_FEET) long height,
      @ForAll @LongRange(min = -8128, max = 8128) long one,
      @ForAll @LongRange(min = -8128, max = 8128) long two,
      @ForAll @LongRange(min = -8128, max = 8128) long three,
      @ForAll @IntRange(min = 0, max = 24) int rise) {
    Shape read = new Shape.Trapezoid(new Length(eave), new Length(ridge), new Length(height));
    Shape truth = new Shape.Trapezoid(
        new Length(eave + one), new Length(ridge + two), new Length(height + three));
    Plane.Bounds bounds = plane(read, rise).slopedArea(RoofNotes.usualTolerance());
    assertThat(bounds.contains(plane(truth, rise).slopedArea())).isTrue();
    Plane.Bounds free =
        plane(new Shape.Polygon(read.corners(1)), rise).slopedArea(RoofNotes.usualTolerance());
    assertThat(free.contains(plane(read, rise).slopedArea())).isTrue();
  }

  @Property(tries = 100)
  void shares_of_the_planes_sum_to_the_length(
      @ForAll @LongRange(min = 100_000, max = FORTY_FEET) long width,
      @ForAll @LongRange(min = 0, max = FORTY_FEET) long more,
      @ForAll @IntRange(min = 1, max = 24) int rise) {
    Roof roof = hip(width * 2, more, rise, rise).orElseThrow();
    double edges = roof.sharedEdges().stream()
        .filter(edge -> edge.kind() == EdgeKind.HIP)
        .mapToDouble(edge -> edge.length().inches())
        .sum();
    assertThat(roof.length(EdgeKind.HIP).inches()).isCloseTo(edges, within(1e-6));
  }

  @Provide
  Arbitrary<Plane> planes() {
    Arbitrary<Long> lengths = Arbitraries.longs().between(1_000, FORTY_FEET);
    Arbitrary<Long> offsets = Arbitraries.longs().between(-FORTY_FEET, FORTY_FEET);
    return Combinators.combine(lengths, lengths, lengths, offsets)
        .as((eave, ridge, height, offset) -> plane(
            new Shape.Trapezoid(
                new Length(eave),
                new Length(ridge),
                new Length(height),
                Optional.of(new Length(offset))),
            6));
  }

  private static double area(Shape shape, int rise) {
    return plane(shape, rise).slopedArea().squareFeet();
  }

  private static Plane plane(Shape shape, int rise) {
    PlaneNotes notes = new PlaneNotes("A", shape, Measured.IN_PLAN, Pitch.of(rise));
    PlaneNotes open = notes;
    for (String side : shape.sideNames()) {
      open = open.with(SideNotes.of(side, EdgeKind.OPEN).with(new Meets.Unsaid()));
    }
    return resolved(RoofNotes.of(open)).planes().get(0);
  }

  private static Optional<Roof> hip(long width, long more, int sides, int ends) {
    Length length = new Length(width + more);
    double endRuns = (double) width * sides / ends;
    return endRuns > length.units() - 1000 && sides != ends
        ? Optional.empty()
        : Optional.of(
            resolved(RoofForms.hip(length, new Length(width), Pitch.of(sides), Pitch.of(ends))));
  }

  private static Roof resolved(RoofNotes notes) {
    var read = Roof.resolve(notes);
    assertThat(read.findings()).isEmpty();
    return read.value().orElseThrow();
  }
}
