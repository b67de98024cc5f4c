package squaresheet.geometry;

import java.math.BigInteger;
import squaresheet.units.DerivedLength;
import squaresheet.units.Length;

/**
 * An exact rational number. As a place or a length it counts units of 1/320 mm, as an area units squared.
 *
 * <p>Kept in lowest terms with the denominator above 0, in two longs where they fit, else in big integers. Equal is equal.
 * Text form: {@code 7/3}, {@code 2}.
 */
public sealed interface Fraction extends Comparable<Fraction> permits NarrowFraction, WideFraction {

  /** A whole number. */
  static Fraction of(long whole) {
    return new NarrowFraction(whole, 1);
  }

  /** The whole number of units in an exact length. */
  static Fraction of(Length length) {
    return of(length.units());
  }

  /**
   * A numerator over a denominator.
   *
   * @throws ArithmeticException if the denominator is 0
   */
  static Fraction of(long numerator, long denominator) {
    return NarrowFraction.reduced(numerator, denominator);
  }

  /**
   * A numerator over a denominator.
   *
   * @throws ArithmeticException if the denominator is 0
   */
  static Fraction of(BigInteger numerator, BigInteger denominator) {
    return WideFraction.reduced(numerator, denominator);
  }

  /** The numerator, with the sign. */
  BigInteger numerator();

  /** The denominator, more than 0. */
  BigInteger denominator();

  /** The sum. */
  default Fraction plus(Fraction other) {
    return of(
        numerator().multiply(other.denominator()).add(other.numerator().multiply(denominator())),
        denominator().multiply(other.denominator()));
  }

  /** The number less another. */
  default Fraction minus(Fraction other) {
    return plus(other.negated());
  }

  /** The product. */
  default Fraction times(Fraction other) {
    return of(numerator().multiply(other.numerator()), denominator().multiply(other.denominator()));
  }

  /** The number times a whole number. */
  default Fraction times(long factor) {
    return times(of(factor));
  }

  /**
   * The quotient.
   *
   * @throws ArithmeticException if the divisor is 0
   */
  default Fraction dividedBy(Fraction divisor) {
    return of(
        numerator().multiply(divisor.denominator()), denominator().multiply(divisor.numerator()));
  }

  /** The number over a whole number. */
  default Fraction dividedBy(long divisor) {
    return dividedBy(of(divisor));
  }

  /** The number with the other sign. */
  default Fraction negated() {
    return of(numerator().negate(), denominator());
  }

  /** -1, 0 or 1. */
  default int signum() {
    return numerator().signum();
  }

  /** Whether this is 0. */
  default boolean isZero() {
    return signum() == 0;
  }

  /** Whether this is a whole number. */
  default boolean isWhole() {
    return denominator().equals(BigInteger.ONE);
  }

  /** The larger of the two. */
  default Fraction max(Fraction other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /** The smaller of the two. */
  default Fraction min(Fraction other) {
    return compareTo(other) <= 0 ? this : other;
  }

  /** The largest whole number not above this. */
  default long floor() {
    BigInteger[] parts = numerator().divideAndRemainder(denominator());
    return parts[0].subtract(BigInteger.valueOf(parts[1].signum() < 0 ? 1 : 0)).longValueExact();
  }

  /** The smallest whole number not below this. */
  default long ceiling() {
    return Math.negateExact(negated().floor());
  }

  /** This many units as the nearest exact length; half a unit goes up. */
  default Length nearest() {
    return new Length(plus(of(1, 2)).floor());
  }

  /** The number as near as a double holds it. */
  double toDouble();

  /** This many units as a derived length. */
  default DerivedLength toLength() {
    return new DerivedLength(toDouble() / Length.ofInches(1).units());
  }

  @Override
  default int compareTo(Fraction other) {
    return numerator()
        .multiply(other.denominator())
        .compareTo(other.numerator().multiply(denominator()));
  }
}
