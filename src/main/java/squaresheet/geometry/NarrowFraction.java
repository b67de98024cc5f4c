package squaresheet.geometry;

import java.math.BigInteger;

/** A fraction whose numerator and denominator fit in a long, as they do for almost every roof. */
record NarrowFraction(long top, long bottom) implements Fraction {

  static Fraction reduced(long top, long bottom) {
    if (bottom == 0) {
      throw new ArithmeticException("a fraction's denominator must not be 0");
    }
    if (top == Long.MIN_VALUE || bottom == Long.MIN_VALUE) {
      return WideFraction.reduced(BigInteger.valueOf(top), BigInteger.valueOf(bottom));
    }
    long common = Long.signum(bottom) * greatestCommonDivisor(Math.abs(top), Math.abs(bottom));
    return new NarrowFraction(top / common, bottom / common);
  }

  private static long greatestCommonDivisor(long a, long b) {
    long one = a;
    long other = b;
    while (other != 0) {
      long rest = one % other;
      one = other;
      other = rest;
    }
    return one;
  }

  @Override
  public BigInteger numerator() {
    return BigInteger.valueOf(top);
  }

  @Override
  public BigInteger denominator() {
    return BigInteger.valueOf(bottom);
  }

  @Override
  public Fraction plus(Fraction other) {
    if (other instanceof NarrowFraction narrow
        && fits(top, narrow.bottom)
        && fits(narrow.top, bottom)
        && fits(bottom, narrow.bottom)) {
      long one = top * narrow.bottom;
      long two = narrow.top * bottom;
      long sum = one + two;
      if (((one ^ sum) & (two ^ sum)) >= 0) {
        return reduced(sum, bottom * narrow.bottom);
      }
    }
    return Fraction.super.plus(other);
  }

  @Override
  public Fraction times(Fraction other) {
    if (other instanceof NarrowFraction narrow
        && fits(top, narrow.top)
        && fits(bottom, narrow.bottom)) {
      return reduced(top * narrow.top, bottom * narrow.bottom);
    }
    return Fraction.super.times(other);
  }

  @Override
  public Fraction dividedBy(Fraction divisor) {
    if (divisor instanceof NarrowFraction narrow
        && fits(top, narrow.bottom)
        && fits(bottom, narrow.top)) {
      return reduced(top * narrow.bottom, bottom * narrow.top);
    }
    return Fraction.super.dividedBy(divisor);
  }

  /** Whether the product of two numbers fits in a long. */
  private static boolean fits(long one, long other) {
    return Math.multiplyHigh(one, other) == ((one * other) >> 63);
  }

  @Override
  public Fraction negated() {
    boolean fits = top != Long.MIN_VALUE;
    return fits ? new NarrowFraction(-top, bottom) : Fraction.super.negated();
  }

  @Override
  public int signum() {
    return Long.signum(top);
  }

  @Override
  public boolean isWhole() {
    return bottom == 1;
  }

  @Override
  public long floor() {
    return Math.floorDiv(top, bottom);
  }

  @Override
  public double toDouble() {
    return (double) top / bottom;
  }

  /** Compares the cross products in 128 bits. */
  @Override
  public int compareTo(Fraction other) {
    if (!(other instanceof NarrowFraction narrow)) {
      return Fraction.super.compareTo(other);
    }
    if (bottom == narrow.bottom) {
      return Long.compare(top, narrow.top);
    }
    int high =
        Long.compare(Math.multiplyHigh(top, narrow.bottom), Math.multiplyHigh(narrow.top, bottom));
    return high != 0 ? high : Long.compareUnsigned(top * narrow.bottom, narrow.top * bottom);
  }

  @Override
  public String toString() {
    return bottom == 1 ? Long.toString(top) : top + "/" + bottom;
  }
}
