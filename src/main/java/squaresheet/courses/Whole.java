package squaresheet.courses;

import java.math.BigInteger;

/** Whole-number division of products that may not fit a long. */
final class Whole {

  private Whole() {}

  /** {@code ⌈value·times/by⌉}, for a divisor more than 0. */
  static int up(long value, long times, long by) {
    return Math.toIntExact(-down(-value, times, by));
  }

  /** {@code ⌊value·times/by⌋}, for a divisor more than 0. */
  static long down(long value, long times, long by) {
    long high = Math.multiplyHigh(value, times);
    long low = value * times;
    return fits(high, low)
        ? Math.floorDiv(low, by)
        : floor(
            BigInteger.valueOf(value).multiply(BigInteger.valueOf(times)), BigInteger.valueOf(by));
  }

  private static boolean fits(long high, long low) {
    return high == low >> 63;
  }

  private static long floor(BigInteger value, BigInteger by) {
    BigInteger[] parts = value.divideAndRemainder(by);
    BigInteger floor = parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    return floor.longValueExact();
  }
}
