package squaresheet.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import squaresheet.geometry.Fraction;
import squaresheet.geometry.Outline;
import squaresheet.geometry.Point;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Plane;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.roof.PlaneNotes.Meets;
import squaresheet.roof.PlaneNotes.SideNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/**
 * Rows of ice barrier against a count by strips: the outline is cut at many heights of every sheet, and the widest cut is the
 * row. The product is 36 in wide and laps 3 1/2 in.
 */
class IceRowsTest {

  private static final double SHEET = 3;
  private static final double STEP = 32.5 / 12;

  private static final double CUTS = 400;

  /** Feet a row: the sides of these shapes close by up to 17 ft for each foot up, and the widest place lies half a cut off. */
  private static final double MISSED = 17 * SHEET / CUTS / 2 + 0.001;

  private static Length feet(double feet) {
    return Length.nearestInches(feet * 12);
  }

  private static Shape.Polygon polygon(double... corners) {
    List<Point> points = new ArrayList<>();
    for (int at = 0; at < corners.length; at += 2) {
      points.add(new Point(feet(corners[at]), feet(corners[at + 1])));
    }
    return new Shape.Polygon(points);
  }

  private static PlaneNotes plane(Shape shape, Measured measured, double rise, EdgeKind... kinds) {
    PlaneNotes notes = new PlaneNotes("A", shape, measured, new Pitch(BigDecimal.valueOf(rise)));
    for (int side = 0; side < kinds.length; side++) {
      notes = notes.with(SideNotes.of(shape.sideNames().get(side), kinds[side])
          .with(kinds[side].isShared() ? new Meets.Nothing() : new Meets.Unsaid()));
    }
    return notes;
  }

  private static Roof roof(PlaneNotes notes) {
    return Roof.resolve(RoofNotes.of(notes)).value().orElseThrow();
  }

  private static Takeoff takeoff(Roof roof, double overhang) {
    return Jobs.of(Names.of(roof).with("eave_overhang", overhang));
  }

  /** The width of the outline at a height, cut exactly. */
  private static double width(Outline outline, double height) {
    Fraction at = Fraction.of(feet(height));
    return outline.spansAt(at).stream()
        .mapToDouble(span -> span.length().toFeet())
        .sum();
  }

  private static double widest(Outline outline, double from, double to) {
    return DoubleStream.iterate(0, cut -> cut + 1)
        .limit((long) CUTS)
        .map(cut -> width(outline, from + (to - from) * (cut + 0.5) / CUTS))
        .max()
        .orElseThrow();
  }

  /** All rows, cut by cut. */
  private static double counted(Plane plane, int rows) {
    double top = plane.height().toFeet();
    double sum = 0;
    for (int row = 0; row < rows; row++) {
      double from = Math.min(row * STEP, top - 0.001);
      sum += widest(plane.outline(), from, Math.min(row * STEP + SHEET, top));
    }
    return sum;
  }

  private static void agrees(PlaneNotes notes, double overhang) {
    Roof roof = roof(notes);
    Plane plane = roof.planes().get(0);
    Takeoff takeoff = takeoff(roof, overhang);
    int rows = (int) Math.round(takeoff.number("ice_rows", 0).orElseThrow());
    double length = takeoff.number("ice_row_length", 0).orElseThrow();
    if (rows <= 4) {
      assertThat(length)
          .as(notes + ", " + rows + " rows")
          .isCloseTo(counted(plane, rows), within(rows * MISSED));
    } else {
      assertThat(length)
          .as("rows from the fifth up are never too short: " + notes)
          .isGreaterThan(counted(plane, rows) - rows * MISSED);
    }
    assertThat(takeoff.number("ice_area", 0).orElseThrow())
        .as("no more is covered than there is sheet: " + notes)
        .isLessThanOrEqualTo(length * SHEET + 1e-6);
  }

  private static double between(Random random, double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  @Property(tries = 100)
  void a_row_is_as_long_as_a_named_shape_is_wide_within_its_sheet(@ForAll long seed) {
    Random random = new Random(seed);
    double eave = between(random, 6, 40);
    double high = between(random, 3, 22);
    double top = between(random, 2, 50);
    Shape shape = List.<Shape>of(
            new Shape.Rectangle(feet(eave), feet(high)),
            new Shape.Triangle(feet(eave), feet(high)),
            new Shape.Trapezoid(feet(eave), feet(top), feet(high), Optional.empty()),
            new Shape.Parallelogram(feet(eave), feet(high), feet(between(random, -9, 9))))
        .get(random.nextInt(4));
    Measured measured = random.nextBoolean() ? Measured.IN_PLAN : Measured.ON_SLOPE;
    agrees(plane(shape, measured, between(random, 3, 14)), between(random, 0, 36));
  }

  /** A notch of any depth between two valleys, then a right side that leans in. */
  @Property(tries = 100)
  void a_row_of_a_polygon_is_as_long_as_the_signed_sum_at_its_widest(@ForAll long seed) {
    Random random = new Random(seed);
    double eave = between(random, 24, 50);
    double high = between(random, 6, 22);
    double from = between(random, 3, eave / 3);
    double deep = between(random, 1, high - 1);
    double wide = between(random, 4, eave / 3);
    double lean = between(random, 0.5, 6);
    Shape.Polygon shape = polygon(
        0, 0, from, 0, from + wide / 2, deep, from + wide, 0, eave, 0, eave - lean, high, 0, high);
    if (random.nextBoolean()) {
      List<Point> turned = new ArrayList<>(shape.corners());
      java.util.Collections.reverse(turned);
      EdgeKind[] kinds = {
        EdgeKind.RIDGE,
        EdgeKind.HIP,
        EdgeKind.EAVE,
        EdgeKind.VALLEY,
        EdgeKind.VALLEY,
        EdgeKind.EAVE,
        EdgeKind.RAKE
      };
      agrees(
          plane(new Shape.Polygon(turned), Measured.IN_PLAN, between(random, 3, 12), kinds),
          between(random, 0, 30));
      return;
    }
    agrees(
        plane(
            shape,
            Measured.ON_SLOPE,
            between(random, 3, 12),
            EdgeKind.EAVE,
            EdgeKind.VALLEY,
            EdgeKind.VALLEY,
            EdgeKind.EAVE,
            EdgeKind.HIP,
            EdgeKind.RIDGE,
            EdgeKind.RAKE),
        between(random, 0, 30));
  }

  /**
   * By hand: 20 ft of notch close over 11 ft 2 3/16 in. At 3 ft the plane is 44 - 20 x (1 - 3/11.1823) = 29.366 ft wide, at
   * the top of the second sheet, 5.7083 ft up, 34.210.
   */
  @Test
  void the_front_of_the_demo_house_takes_63_6_ft() {
    Shape.Polygon front = polygon(
        0, 0, 12, 0, 22, 11 + 2.1875 / 12, 32, 0, 44, 0, 44, 15 + 7.8125 / 12, 0, 15 + 7.8125 / 12);
    PlaneNotes notes = plane(
        front,
        Measured.ON_SLOPE,
        6,
        EdgeKind.EAVE,
        EdgeKind.VALLEY,
        EdgeKind.VALLEY,
        EdgeKind.EAVE,
        EdgeKind.RAKE,
        EdgeKind.RIDGE,
        EdgeKind.RAKE);
    assertThat(takeoff(roof(notes), 18).number("ice_row_length", 0).orElseThrow())
        .isCloseTo(63.575, within(0.001));
  }

  /** By hand: two eaves of 20 ft, one 5 ft above the other, two rows each. */
  @Test
  void eaves_at_two_heights_take_their_rows_each() {
    PlaneNotes notes = plane(
        polygon(0, 0, 20, 0, 20, 5, 40, 5, 40, 16, 0, 16),
        Measured.ON_SLOPE,
        6,
        EdgeKind.EAVE,
        EdgeKind.RAKE,
        EdgeKind.EAVE,
        EdgeKind.RAKE,
        EdgeKind.RIDGE,
        EdgeKind.RAKE);
    Takeoff takeoff = takeoff(roof(notes), 18);
    assertThat(takeoff.number("ice_rows", 0)).contains(2.0);
    assertThat(takeoff.number("ice_row_length", 0).orElseThrow()).isCloseTo(80, within(1e-6));
  }
}
