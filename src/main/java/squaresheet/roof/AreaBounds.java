package squaresheet.roof;

import java.util.stream.IntStream;
import squaresheet.geometry.Outline;
import squaresheet.geometry.Point;
import squaresheet.units.Area;
import squaresheet.units.Length;

/** How far an area can be off when every reading is off by at most a tolerance. Bounds are sound; for free shapes not tight. */
final class AreaBounds {

  private AreaBounds() {}

  static Plane.Bounds of(Plane plane, Length tolerance) {
    Plane.Bounds gross = gross(plane, tolerance);
    double low = gross.low().squareFeet();
    double high = gross.high().squareFeet();
    for (Opening opening : plane.openings()) {
      double area = opening.slopedArea().squareFeet();
      double slack = slack(opening.outline(), tolerance, plane.across());
      low -= area + slack;
      high -= Math.max(0, area - slack);
    }
    return new Plane.Bounds(new Area.Sloped(Math.max(0, low)), new Area.Sloped(high));
  }

  /** The area of a named shape grows with each of its lengths and does not change with its offset. */
  private static Plane.Bounds gross(Plane plane, Length tolerance) {
    if (plane.shape() instanceof Shape.Polygon) {
      double area = plane.grossArea().squareFeet();
      double slack = slack(plane.outline(), tolerance, plane.across());
      return new Plane.Bounds(
          new Area.Sloped(Math.max(0, area - slack)), new Area.Sloped(area + slack));
    }
    return new Plane.Bounds(
        new Area.Sloped(area(plane, tolerance.negated())), new Area.Sloped(area(plane, tolerance)));
  }

  private static double area(Plane plane, Length change) {
    Shape shape = plane.shape();
    for (String name : shape.lengths().keySet()) {
      Length changed = shape.lengths().get(name).plus(change);
      boolean gone = !changed.isPositive() && !name.equals("offset");
      if (gone) {
        return 0;
      }
      shape = name.equals("offset") ? shape : shape.with(name, changed);
    }
    return Outline.fault(shape.corners(1)).isPresent()
        ? 0
        : new Stretched(shape, plane.across()).area().squareFeet();
  }

  /**
   * How much the area of a polygon changes at most when each corner moves by at most the tolerance t each way, up the slope
   * by {@code stretch} times as much: half the sum of t·|Δy| + t'·|Δx| over the neighbours of each corner, and t·t' for
   * each corner.
   */
  private static double slack(Outline outline, Length tolerance, double stretch) {
    double along = tolerance.toFeet();
    double up = along * stretch;
    return IntStream.range(0, outline.corners().size())
        .mapToDouble(index -> {
          Point before = outline.corner(index - 1);
          Point after = outline.corner(index + 1);
          double across = Math.abs(after.y().minus(before.y()).toFeet());
          double beside = Math.abs(after.x().minus(before.x()).toFeet());
          return (along * across + up * beside) / 2 + along * up;
        })
        .sum();
  }
}
