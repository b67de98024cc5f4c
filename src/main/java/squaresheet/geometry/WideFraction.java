package squaresheet.geometry;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/** A fraction that does not fit in two longs; never one that does, so that equal is equal. */
record WideFraction(BigInteger numerator, BigInteger denominator) implements Fraction {

  private static final int LONG_BITS = 63;

  static Fraction reduced(BigInteger top, BigInteger bottom) {
    if (bottom.signum() == 0) {
      throw new ArithmeticException("a fraction's denominator must not be 0");
    }
    BigInteger common = top.gcd(bottom).multiply(BigInteger.valueOf(bottom.signum()));
    BigInteger over = top.divide(common);
    BigInteger under = bottom.divide(common);
    return over.bitLength() <= LONG_BITS && under.bitLength() <= LONG_BITS
        ? new NarrowFraction(over.longValueExact(), under.longValueExact())
        : new WideFraction(over, under);
  }

  @Override
  public double toDouble() {
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), MathContext.DECIMAL64)
        .doubleValue();
  }

  @Override
  public String toString() {
    return isWhole() ? numerator.toString() : numerator + "/" + denominator;
  }
}
