package squaresheet.geometry;

import squaresheet.units.DerivedLength;
import squaresheet.units.Length;

/**
 * A point of a plane figure, exact.
 *
 * @param x to the right of the origin, negative to the left
 * @param y up from the origin, negative below
 */
public record Point(Length x, Length y) {

  /** The point (0, 0). */
  public static final Point ORIGIN = new Point(Length.ZERO, Length.ZERO);

  /** The point so many 1/320 mm right and up of the origin. */
  static Point ofUnits(long x, long y) {
    return new Point(new Length(x), new Length(y));
  }

  /** The point {@code right} and {@code up} from this one. */
  public Point plus(Length right, Length up) {
    return new Point(x.plus(right), y.plus(up));
  }

  /** The straight distance to another point. */
  public DerivedLength distanceTo(Point other) {
    return new DerivedLength(
        Math.hypot(x.minus(other.x).toInches(), y.minus(other.y).toInches()));
  }

  @Override
  public String toString() {
    return "(" + x + ", " + y + ")";
  }
}
