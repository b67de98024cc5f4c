package squaresheet.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length as a tape reads it, exact in both systems: a whole number of 1/320 mm, which holds 1/64 in (127 units) and
 * 0.1 mm (32 units) alike.
 *
 * <p>Range: ±28 million km, far past any roof; negative lengths exist as differences. Text form: {@code 24' 6 1/2"} where
 * the length is a whole number of 64ths of an inch, else millimetres, {@code 7480.3 mm}.
 *
 * @param units the length in 1/320 mm
 */
public record Length(long units) implements Comparable<Length> {

  /** No length at all. */
  public static final Length ZERO = new Length(0);

  private static final long PER_MILLIMETRE = 320;
  private static final long PER_INCH = 8128;
  private static final long PER_64TH = 127;
  private static final Pattern IMPERIAL =
      Pattern.compile("(-)?(?:(\\d+)'(?: ?(?=\\d)|$))?(?:(\\d+)\"|(?:(\\d+) )?(\\d+)/(\\d+)\")?");
  private static final Pattern METRIC = Pattern.compile("(-?\\d+(?:\\.\\d+)?) mm");

  /** The length of {@code count} whole inches. */
  public static Length ofInches(long count) {
    return new Length(Math.multiplyExact(count, PER_INCH));
  }

  /** The length of {@code feet} feet and {@code inches} whole inches. */
  public static Length of(long feet, long inches) {
    return ofInches(Math.addExact(Math.multiplyExact(feet, 12), inches));
  }

  /**
   * The length of a fraction of an inch, such as 53/4 for 13 1/4 in.
   *
   * @throws ArithmeticException if the fraction is not a whole number of 1/320 mm
   */
  public static Length ofInches(long numerator, long denominator) {
    return exactly(
        BigDecimal.valueOf(numerator).multiply(BigDecimal.valueOf(PER_INCH)), denominator);
  }

  /**
   * The length of a decimal number of inches.
   *
   * @throws ArithmeticException if it is not a whole number of 1/320 mm; {@link #nearestInches} rounds instead
   */
  public static Length fromInches(BigDecimal inches) {
    return exactly(inches.multiply(BigDecimal.valueOf(PER_INCH)), 1);
  }

  /**
   * The length of a decimal number of millimetres.
   *
   * @throws ArithmeticException if it is not a whole number of 1/320 mm
   */
  public static Length fromMillimetres(BigDecimal millimetres) {
    return exactly(millimetres.multiply(BigDecimal.valueOf(PER_MILLIMETRE)), 1);
  }

  /** The exact length nearest to {@code inches}, at most 1/640 mm away. */
  public static Length nearestInches(double inches) {
    double whole = inches * PER_INCH;
    if (Double.isNaN(whole) || Math.abs(whole) >= Long.MAX_VALUE) {
      throw new IllegalArgumentException(
          "length must be a number of inches within 1.1e15, but is " + inches);
    }
    return new Length(Math.round(whole));
  }

  /** The exact length nearest to {@code inches}, at most 1/640 mm away. */
  public static Length nearestInches(BigDecimal inches) {
    return nearestUnits(inches.multiply(BigDecimal.valueOf(PER_INCH)));
  }

  /** The exact length nearest to {@code millimetres}, at most 1/640 mm away. */
  public static Length nearestMillimetres(BigDecimal millimetres) {
    return nearestUnits(millimetres.multiply(BigDecimal.valueOf(PER_MILLIMETRE)));
  }

  private static Length nearestUnits(BigDecimal units) {
    return new Length(units.setScale(0, RoundingMode.HALF_UP).longValueExact());
  }

  private static Length exactly(BigDecimal units, long divisor) {
    return new Length(units.divide(BigDecimal.valueOf(divisor)).longValueExact());
  }

  /**
   * Reads the text form, strictly.
   *
   * @throws IllegalArgumentException with a sentence, if the text is not one
   */
  public static Length parse(String text) {
    try {
      return strictly(text);
    } catch (ArithmeticException | NumberFormatException unreadable) {
      throw new IllegalArgumentException(
          "length must read like 24' 6 1/2\" or 7480.3 mm, but reads '" + text + "'", unreadable);
    }
  }

  private static Length strictly(String text) {
    Matcher metric = METRIC.matcher(text);
    if (metric.matches()) {
      return fromMillimetres(new BigDecimal(metric.group(1)));
    }
    Matcher imperial = IMPERIAL.matcher(text);
    if (!imperial.matches() || text.isEmpty() || text.equals("-")) {
      throw new NumberFormatException(text);
    }
    return imperial(imperial);
  }

  private static Length imperial(Matcher parts) {
    if (number(parts.group(5), 0) >= number(parts.group(6), 1)) {
      throw new NumberFormatException("a fraction of an inch must be less than 1");
    }
    long inches = number(parts.group(3), number(parts.group(4), 0));
    Length part = ofInches(number(parts.group(5), 0), number(parts.group(6), 1));
    Length sum = of(number(parts.group(2), 0), inches).plus(part);
    return parts.group(1) == null ? sum : sum.negated();
  }

  private static long number(String digits, long otherwise) {
    return digits == null ? otherwise : Long.parseLong(digits);
  }

  /** This length and {@code other} end to end. */
  public Length plus(Length other) {
    return new Length(Math.addExact(units, other.units));
  }

  /** This length less {@code other}; negative if the other is longer. */
  public Length minus(Length other) {
    return new Length(Math.subtractExact(units, other.units));
  }

  /** {@code count} of this length end to end. */
  public Length times(long count) {
    return new Length(Math.multiplyExact(units, count));
  }

  /** This length, taken the other way. */
  public Length negated() {
    return new Length(Math.negateExact(units));
  }

  /** The length without its sign. */
  public Length abs() {
    return units < 0 ? negated() : this;
  }

  /** Whether this is no length at all. */
  public boolean isZero() {
    return units == 0;
  }

  /** Whether this length is more than zero. */
  public boolean isPositive() {
    return units > 0;
  }

  /** This length in inches, as near as a double holds it. */
  public double toInches() {
    return units / (double) PER_INCH;
  }

  /** This length in feet, as near as a double holds it. */
  public double toFeet() {
    return units / (12.0 * PER_INCH);
  }

  /** This length in millimetres, as near as a double holds it. */
  public double toMillimetres() {
    return units / (double) PER_MILLIMETRE;
  }

  /** This length in metres, as near as a double holds it. */
  public double toMetres() {
    return units / (1000.0 * PER_MILLIMETRE);
  }

  /** This length as a derived one. */
  public DerivedLength toDerived() {
    return new DerivedLength(toInches());
  }

  /** This length on a tape with the given marks, rounded in the given direction. */
  public Length roundedTo(Graduation graduation, Direction direction) {
    long marks = direction.divide(units, graduation.units());
    return new Length(Math.multiplyExact(marks, graduation.units()));
  }

  /** For people: rounded to the nearest mark of the graduation, in its own notation. Does not read back exactly. */
  public String show(Graduation graduation) {
    return graduation.write(roundedTo(graduation, Direction.NEAREST));
  }

  /**
   * For people at the other end of a tape: rounded to the nearest mark, in inches all the way and no feet, as a tape hooked
   * on a line reads; in millimetres on a metric tape.
   */
  public String showOnTape(Graduation graduation) {
    Length marked = roundedTo(graduation, Direction.NEAREST);
    if (!graduation.isImperial() || marked.abs().units < 12 * PER_INCH) {
      return marked.show(graduation);
    }
    Length rest = new Length(marked.abs().units % PER_INCH);
    String inches = (marked.units < 0 ? "-" : "") + marked.abs().units / PER_INCH;
    return rest.isZero() ? inches + "\"" : inches + " " + rest.show(graduation);
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(units, other.units);
  }

  @Override
  public String toString() {
    if (units % PER_64TH == 0) {
      return Graduation.SIXTY_FOURTH.write(this);
    }
    BigDecimal millimetres = BigDecimal.valueOf(units).divide(BigDecimal.valueOf(PER_MILLIMETRE));
    return millimetres.toPlainString() + " mm";
  }
}
