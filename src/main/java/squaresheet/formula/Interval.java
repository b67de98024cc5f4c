package squaresheet.formula;

/**
 * All numbers from one to another: what a quantity may be when its readings may each be off by their tolerance.
 *
 * @param low the least, finite
 * @param high the most, not under the least
 */
public record Interval(double low, double high) {

  public Interval {
    if (!(low <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException(
          "an interval must run upward between numbers, but runs from " + low + " to " + high);
    }
  }

  /** The one number. */
  public static Interval of(double number) {
    return new Interval(number, number);
  }

  /** All numbers at most {@code tolerance} from the reading. */
  public static Interval around(double reading, double tolerance) {
    return new Interval(reading - Math.abs(tolerance), reading + Math.abs(tolerance));
  }

  /** Whether this is one number only. */
  public boolean isExact() {
    return low == high;
  }

  /** Whether the number is one of these, ends included. */
  public boolean contains(double number) {
    return number >= low && number <= high;
  }

  /** From the least to the most of both. */
  Interval with(Interval other) {
    return new Interval(Math.min(low, other.low), Math.max(high, other.high));
  }

  Interval plus(Interval other) {
    return new Interval(low + other.low, high + other.high);
  }

  Interval negated() {
    return new Interval(-high, -low);
  }

  Interval times(Interval other) {
    double a = low * other.low;
    double b = low * other.high;
    double c = high * other.low;
    double d = high * other.high;
    return new Interval(
        Math.min(Math.min(a, b), Math.min(c, d)), Math.max(Math.max(a, b), Math.max(c, d)));
  }

  /** One over this, which must not hold 0. */
  Interval inverted() {
    return new Interval(1 / high, 1 / low);
  }

  @Override
  public String toString() {
    return isExact()
        ? Coercion.general(low)
        : Coercion.general(low) + " to " + Coercion.general(high);
  }
}
