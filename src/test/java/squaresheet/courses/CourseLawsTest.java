package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import squaresheet.geometry.Point;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Length;

class CourseLawsTest {

  private static final GeometryFactory JTS = new GeometryFactory();
  private static final double INCH = 8128;

  @Property(tries = 150)
  void the_count_is_never_below_the_area_nor_above_one_more_piece_per_cut_end(
      @ForAll("shapes") Shape shape, @ForAll("stairs") LayoutSettings settings) {
    CoursePlan plan = Laid.plan(Laid.METRIC, settings, shape);
    double piece = plan.shingle().length().toInches();
    double covered = stretches(plan).mapToDouble(CourseLawsTest::width).sum();
    Pieces pieces = plan.piecesWithoutReuse();
    long ends = 2 * stretches(plan).count();
    assertThat(pieces.used() * plan.shingle().coveragePerPiece().squareFeet())
        .isGreaterThanOrEqualTo(plan.plane().slopedArea().squareFeet() * (1 - 1e-12));
    assertThat(pieces.used() * piece).isGreaterThanOrEqualTo(covered - 1e-6);
    assertThat(pieces.used() * piece).isLessThan(covered + ends * piece);
    assertThat(plan.pieces().used()).isLessThanOrEqualTo(pieces.used());
  }

  @Property(tries = 150)
  void the_mirror_image_begun_from_the_other_hand_takes_the_same(
      @ForAll("polygons") List<Point> corners, @ForAll("stairs") LayoutSettings settings) {
    PlaneNotes plane = raked(corners);
    PlaneNotes image = raked(mirrored(corners));
    LayoutSettings other = settings.with(settings.joints().from(LayoutSettings.Hand.RIGHT));
    CoursePlan one = Laid.roof(Laid.METRIC, settings, plane).plans().get(0);
    CoursePlan two = Laid.roof(Laid.METRIC, other, image).plans().get(0);
    assertThat(two.pieces()).isEqualTo(one.pieces());
    assertThat(two.slivers()).isEqualTo(one.slivers());
    assertThat(two.courses()).isEqualTo(one.courses());
  }

  @Property(tries = 150)
  void runs_are_those_that_a_topology_library_cuts_out(@ForAll("polygons") List<Point> corners) {
    CoursePlan plan = Laid.roof(
            Laid.METRIC, Laid.FLUSH, Laid.plane("A", new Shape.Polygon(corners)))
        .plans()
        .get(0);
    for (int number = 0; number < plan.courses(); number++) {
      CoursePlan.Course course = plan.course(number);
      List<Envelope> expected = cutOut(corners, course);
      assertThat(course.stretches()).hasSameSizeAs(expected);
      for (int index = 0; index < expected.size(); index++) {
        CoursePlan.Stretch stretch = course.stretches().get(index);
        assertThat(stretch.from().inches()).isCloseTo(expected.get(index).getMinX(), within(1e-6));
        assertThat(stretch.to().inches()).isCloseTo(expected.get(index).getMaxX(), within(1e-6));
      }
    }
  }

  /** The intersection of outline and band by the topology library (JTS), each connected part as its extent. */
  private static List<Envelope> cutOut(List<Point> corners, CoursePlan.Course course) {
    List<Coordinate> ring = new ArrayList<>();
    corners.forEach(at -> ring.add(new Coordinate(at.x().units() / INCH, at.y().units() / INCH)));
    ring.add(ring.get(0));
    Geometry outline = JTS.createPolygon(ring.toArray(Coordinate[]::new));
    Geometry band = JTS.toGeometry(
        new Envelope(-1e5, 1e5, course.bottom().inches(), course.top().inches()));
    Geometry parts = outline.intersection(band);
    return IntStream.range(0, parts.getNumGeometries())
        .mapToObj(parts::getGeometryN)
        .filter(part -> part.getArea() > 1e-9)
        .map(Geometry::getEnvelopeInternal)
        .sorted(
            Comparator.comparingDouble(Envelope::getMinX).thenComparingDouble(Envelope::getMaxX))
        .toList();
  }

  @Property(tries = 100)
  void a_rectangle_split_along_a_course_line_keeps_every_full_piece(
      @ForAll @LongRange(min = 200_000, max = 6_000_000) long eave,
      @ForAll @IntRange(min = 1, max = 12) int repeats,
      @ForAll @LongRange(min = 1, max = 2_000_000) long above) {
    LayoutSettings settings = Laid.begun(Laid.FLUSH, "36\"", "26\"", "16\"");
    long line = 3L * repeats * Laid.in("5\"").units();
    Length wide = new Length(eave);
    Pieces whole = rectangle(settings, wide, line + above).piecesWithoutReuse();
    Pieces lower = rectangle(settings, wide, line).piecesWithoutReuse();
    Pieces upper = rectangle(settings, wide, above).piecesWithoutReuse();
    assertThat(lower.plus(upper)).isEqualTo(whole);
  }

  /** The upper part begins its joints at its own corner: each course above the line may gain or lose one full piece. */
  @Property(tries = 100)
  void a_hip_split_along_a_course_line_changes_at_most_one_full_piece_a_course_above_it(
      @ForAll @IntRange(min = 2, max = 12) int below,
      @ForAll @IntRange(min = 2, max = 20) int above,
      @ForAll @LongRange(min = 20, max = 60) long wide) {
    LayoutSettings settings = Laid.begun(Laid.FLUSH, "36\"");
    Length eave = Laid.in("5\"").times(wide * (below + above));
    Length upperEave = Laid.in("5\"").times(wide * above);
    Length low = Laid.in("5\"").times(below);
    Length high = Laid.in("5\"").times(above);
    Pieces whole = Laid.plan(Laid.STRIP, settings, new Shape.Triangle(eave, low.plus(high)))
        .piecesWithoutReuse();
    Pieces lower = Laid.plan(Laid.STRIP, settings, new Shape.Trapezoid(eave, upperEave, low))
        .piecesWithoutReuse();
    Pieces upper =
        Laid.plan(Laid.STRIP, settings, new Shape.Triangle(upperEave, high)).piecesWithoutReuse();
    assertThat(Math.abs(lower.full() + upper.full() - whole.full())).isLessThanOrEqualTo(above);
  }

  @Property(tries = 200)
  void a_tighter_minimum_never_gives_fewer_violations(
      @ForAll List<@IntRange(min = 1, max = 292_608) Integer> cuts,
      @ForAll @LongRange(min = 0, max = 150_000) long minimum,
      @ForAll @LongRange(min = 0, max = 150_000) long tighter) {
    List<Length> pieces = cuts.isEmpty()
        ? List.of(Laid.in("36\""))
        : cuts.stream().map(Length::new).toList();
    Stagger loose = new Stagger(Laid.in("36\""), pieces, new Length(minimum));
    Stagger tight = new Stagger(Laid.in("36\""), pieces, new Length(minimum + tighter));
    assertThat(tight.violations()).containsAll(loose.violations());
  }

  @Property(tries = 60)
  void both_ends_used_over_the_roof_never_takes_more_than_plane_by_plane(
      @ForAll("shapes") Shape one, @ForAll("shapes") Shape other) {
    RoofLayout layout = Laid.roof(
        Laid.METRIC, LayoutSettings.standard(), Laid.plane("A", one), Laid.plane("B", other));
    long none = layout.pieces(LayoutSettings.Reuse.NONE).used();
    long plane = layout.pieces(LayoutSettings.Reuse.PLANE).used();
    long roof = layout.pieces(LayoutSettings.Reuse.ROOF).used();
    assertThat(List.of(none, plane, roof)).isSortedAccordingTo(Comparator.reverseOrder());
    double area = layout.plans().stream()
        .mapToDouble(plan -> plan.plane().slopedArea().squareFeet())
        .sum();
    assertThat(layout.waste(LayoutSettings.Reuse.NONE).toDouble())
        .isCloseTo(none * Laid.METRIC.coveragePerPiece().squareFeet() / area - 1, within(1e-9));
  }

  @Provide
  Arbitrary<LayoutSettings> stairs() {
    return Arbitraries.longs()
        .between(20_000, 320_040)
        .list()
        .ofMinSize(1)
        .ofMaxSize(5)
        .map(cuts -> LayoutSettings.standard()
            .with(LayoutSettings.Joints.standard()
                .withFirstPieces(cuts.stream().map(Length::new).toList())));
  }

  @Provide
  Arbitrary<Shape> shapes() {
    Arbitrary<Length> lengths = Arbitraries.longs().between(300_000, 4_000_000).map(Length::new);
    Arbitrary<Shape> rectangles = Combinators.combine(lengths, lengths).as(Shape.Rectangle::new);
    Arbitrary<Shape> triangles = Combinators.combine(lengths, lengths)
        .as((eave, height) -> new Shape.Triangle(eave, height, Optional.of(Length.ZERO)));
    Arbitrary<Shape> trapezoids =
        Combinators.combine(lengths, lengths, lengths).as(Shape.Trapezoid::new);
    Arbitrary<Shape> leaning =
        Combinators.combine(lengths, lengths, lengths).as(Shape.Parallelogram::new);
    return Arbitraries.oneOf(rectangles, triangles, trapezoids, leaning);
  }

  /** Stars about a point: simple, and often with two or more parts beside each other in a course. */
  @Provide
  Arbitrary<List<Point>> polygons() {
    return Arbitraries.longs()
        .between(250_000, 2_500_000)
        .list()
        .ofMinSize(4)
        .ofMaxSize(14)
        .map(CourseLawsTest::star);
  }

  private static List<Point> star(List<Long> reaches) {
    List<Point> corners = new ArrayList<>();
    for (int ray = 0; ray < reaches.size(); ray++) {
      double angle = 2 * Math.PI * ray / reaches.size();
      corners.add(new Point(
          new Length(Math.round(reaches.get(ray) * Math.cos(angle))),
          new Length(Math.round(reaches.get(ray) * Math.sin(angle)))));
    }
    return corners;
  }

  private static List<Point> mirrored(List<Point> corners) {
    List<Point> image = new ArrayList<>();
    corners.forEach(at -> image.add(0, new Point(at.x().negated(), at.y())));
    return image;
  }

  /** A polygon all of whose sides are rakes. */
  private static PlaneNotes raked(List<Point> corners) {
    PlaneNotes plane = Laid.plane("A", new Shape.Polygon(corners));
    for (String side : plane.shape().sideNames()) {
      plane = plane.with(PlaneNotes.SideNotes.of(side, EdgeKind.RAKE));
    }
    return plane;
  }

  private static CoursePlan rectangle(LayoutSettings settings, Length eave, long rake) {
    return Laid.plan(Laid.STRIP, settings, new Shape.Rectangle(eave, new Length(rake)));
  }

  private static java.util.stream.Stream<CoursePlan.Stretch> stretches(CoursePlan plan) {
    return IntStream.range(0, plan.courses())
        .boxed()
        .flatMap(number -> plan.course(number).stretches().stream());
  }

  private static double width(CoursePlan.Stretch stretch) {
    return stretch.to().inches() - stretch.from().inches();
  }
}
