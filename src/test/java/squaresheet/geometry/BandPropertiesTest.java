package squaresheet.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import squaresheet.units.Length;

/** Bands and faults held against the topology library, on figures small enough to meet corners and lines often. */
class BandPropertiesTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Coordinates here are below 100,000, where the library's rounding is far below a millionth of a unit. */
  private static final double NEAR = 1e-6;

  @Property(tries = 1000)
  void a_figure_is_faulty_exactly_where_the_library_says_so(
      @ForAll("corners") List<Point> corners) {
    boolean valid = polygon(corners).isValid();
    boolean repeats = corners.stream().distinct().count() < corners.size();
    assertThat(Outline.fault(corners).isEmpty()).isEqualTo(valid && !repeats);
  }

  @Property(tries = 600)
  void spans_are_the_extents_of_the_parts_the_library_cuts(
      @ForAll("regions") Region region,
      @ForAll @IntRange(min = -5, max = 105) int low,
      @ForAll @IntRange(min = 1, max = 60) int height) {
    compare(region, low, low + height);
  }

  @Property(tries = 300)
  void spans_of_large_stars_are_those_of_the_library(
      @ForAll("stars") Outline star,
      @ForAll @IntRange(min = -40_000, max = 40_000) int low,
      @ForAll @IntRange(min = 1, max = 20_000) int height) {
    compare(Region.of(star, List.of()), low, low + height);
  }

  @Property(tries = 300)
  void areas_over_two_bands_sum_exactly(
      @ForAll("regions") Region region, @ForAll @IntRange(min = 1, max = 699) int sevenths) {
    Fraction line = Fraction.of(sevenths, 7);
    Fraction below = region.doubledAreaOver(Fraction.of(-1), line);
    Fraction above = region.doubledAreaOver(line, Fraction.of(101));
    assertThat(below.plus(above)).isEqualTo(Fraction.of(region.doubledArea()));
    assertThat(region.doubledArea() / 2.0).isCloseTo(polygon(region).getArea(), within(NEAR));
  }

  @Property(tries = 300)
  void a_higher_band_reaches_at_least_as_far(
      @ForAll("regions") Region region,
      @ForAll @IntRange(min = 0, max = 690) int low,
      @ForAll @IntRange(min = 1, max = 100) int height,
      @ForAll @IntRange(min = 1, max = 100) int more) {
    Fraction from = Fraction.of(low, 7);
    Fraction to = Fraction.of(low + height, 7);
    List<Span> narrow = region.spansOver(from, to);
    List<Span> wide = region.spansOver(from, to.plus(Fraction.of(more, 7)));
    assertThat(narrow).allMatch(span -> wide.stream()
        .anyMatch(other -> other.left().compareTo(span.left()) <= 0
            && other.right().compareTo(span.right()) >= 0));
  }

  @Property(tries = 300)
  void a_line_meets_as_much_as_the_library_says(
      @ForAll("regions") Region region, @ForAll @IntRange(min = -1, max = 101) int y) {
    Geometry line = FACTORY.createLineString(
        new Coordinate[] {new Coordinate(-200, y), new Coordinate(200, y)});
    List<Span> spans = region.spansAt(Fraction.of(y));
    double width = spans.stream().mapToDouble(span -> span.width().toDouble()).sum();
    Geometry common = polygon(region).intersection(line);
    assertThat(width).isCloseTo(common.getLength(), within(NEAR));
    assertThat(spans.isEmpty()).isEqualTo(common.isEmpty());
  }

  private static void compare(Region region, int low, int high) {
    Geometry band = FACTORY.toGeometry(new Envelope(-200_000, 200_000, low, high));
    Geometry cut = polygon(region).intersection(band);
    List<double[]> expected = IntStream.range(0, cut.getNumGeometries())
        .mapToObj(cut::getGeometryN)
        .filter(part -> part.getDimension() == 2 && !part.isEmpty())
        .map(Geometry::getEnvelopeInternal)
        .map(extent -> new double[] {extent.getMinX(), extent.getMaxX()})
        .sorted(Comparator.comparingDouble((double[] ends) -> ends[0])
            .thenComparingDouble(ends -> ends[1]))
        .toList();
    List<Span> spans = region.spansOver(new Length(low), new Length(high));
    assertThat(spans).as(region + " from " + low + " to " + high).hasSameSizeAs(expected);
    for (int part = 0; part < spans.size(); part++) {
      assertThat(spans.get(part).left().toDouble()).isCloseTo(expected.get(part)[0], within(NEAR));
      assertThat(spans.get(part).right().toDouble()).isCloseTo(expected.get(part)[1], within(NEAR));
    }
  }

  @Provide
  Arbitrary<List<Point>> corners() {
    Arbitrary<Long> places = Arbitraries.longs().between(0, 7);
    return Combinators.combine(places, places)
        .as(Point::ofUnits)
        .list()
        .ofMinSize(3)
        .ofMaxSize(6);
  }

  /** Sound figures with corners on a grid of 101 by 101, with up to three square holes that fit. */
  @Provide
  Arbitrary<Region> regions() {
    Arbitrary<Long> places = Arbitraries.longs().between(0, 100);
    Arbitrary<Long> tens = Arbitraries.longs().between(0, 10).map(ten -> ten * 10);
    Arbitrary<Long> mixed = Arbitraries.oneOf(places, tens);
    Arbitrary<Outline> outlines = Combinators.combine(mixed, mixed)
        .as(Point::ofUnits)
        .list()
        .ofMinSize(3)
        .ofMaxSize(8)
        .map(BandPropertiesTest::untangled)
        .filter(corners -> Outline.fault(corners).isEmpty())
        .map(Outline::of);
    Arbitrary<Outline> holes = Combinators.combine(
            mixed,
            mixed,
            Arbitraries.longs().between(1, 30),
            Arbitraries.longs().between(1, 30))
        .as((x, y, width, height) -> Outline.rectangle(new Length(width), new Length(height))
            .movedBy(new Length(x), new Length(y)));
    return Combinators.combine(outlines, holes.list().ofMaxSize(3))
        .as(BandPropertiesTest::withThoseThatFit);
  }

  /** The corners in order of their direction from the middle, which for most makes a sound figure. */
  private static List<Point> untangled(List<Point> corners) {
    return corners.stream()
        .distinct()
        .sorted(Comparator.comparingDouble(
            corner -> Math.atan2(corner.y().units() - 50.3, corner.x().units() - 49.7)))
        .toList();
  }

  private static Region withThoseThatFit(Outline outline, List<Outline> holes) {
    List<Outline> fitting = new ArrayList<>();
    for (Outline hole : holes) {
      boolean fits = outline.covers(hole)
          && fitting.stream().noneMatch(hole::overlaps)
          && hole.doubledArea() < outline.doubledArea();
      if (fits) {
        fitting.add(hole);
      }
    }
    return Region.of(outline, fitting);
  }

  @Provide
  Arbitrary<Outline> stars() {
    return Arbitraries.longs()
        .between(1_000, 40_000)
        .list()
        .ofMinSize(5)
        .ofMaxSize(60)
        .map(rays -> {
          List<Point> corners = new ArrayList<>();
          for (int ray = 0; ray < rays.size(); ray++) {
            double angle = 2 * Math.PI * ray / rays.size();
            corners.add(Point.ofUnits(
                Math.round(rays.get(ray) * Math.cos(angle)),
                Math.round(rays.get(ray) * Math.sin(angle))));
          }
          return Outline.of(corners);
        });
  }

  private static Geometry polygon(Region region) {
    Geometry cut = polygon(region.outline().corners());
    for (Outline hole : region.holes()) {
      cut = cut.difference(polygon(hole.corners()));
    }
    return cut;
  }

  private static Polygon polygon(List<Point> corners) {
    List<Point> ring = new ArrayList<>(corners);
    ring.add(corners.get(0));
    return FACTORY.createPolygon(ring.stream()
        .map(corner ->
            new Coordinate((double) corner.x().units(), (double) corner.y().units()))
        .toArray(Coordinate[]::new));
  }
}
