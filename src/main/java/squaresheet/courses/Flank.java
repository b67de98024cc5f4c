package squaresheet.courses;

import java.math.BigInteger;
import squaresheet.geometry.Fraction;

/**
 * A side of a plane that is not level, in units, and how far the shingles reach past it along the course.
 *
 * @param lowX x of the lower corner
 * @param lowY y of the lower corner
 * @param highX x of the upper corner
 * @param highY y of the upper corner
 * @param from the height it begins at: below the lower corner where it runs on over the eave's overhang
 * @param isLeft whether the plane lies to the right of it
 * @param past how far past it the shingles reach, 0 or more
 * @param isRake whether it is a rake
 */
record Flank(
    long lowX,
    long lowY,
    long highX,
    long highY,
    long from,
    boolean isLeft,
    long past,
    boolean isRake) {

  boolean isIn(Band band) {
    return band.meets(from, highY);
  }

  /** The side without what runs on over the eave's overhang. */
  Flank proper() {
    return from == lowY ? this : new Flank(lowX, lowY, highX, highY, lowY, isLeft, past, isRake);
  }

  /** The outermost place of the side itself within the band. */
  Fraction bare(Band band) {
    boolean upper = highX > lowX != isLeft;
    long y = upper
        ? Math.min(band.high(), highY * band.shares())
        : Math.max(band.low(), from * band.shares());
    return highX == lowX ? Fraction.of(lowX) : xAt(y, band.shares());
  }

  /** The outermost place the shingles reach along this side within the band. */
  Fraction outermost(Band band) {
    Fraction bare = bare(band);
    return past == 0 ? bare : bare.plus(Fraction.of(isLeft ? -past : past));
  }

  private Fraction xAt(long y, long shares) {
    long rise = highY - lowY;
    try {
      long whole = Math.multiplyExact(Math.multiplyExact(lowX, rise), shares);
      long rest = Math.multiplyExact(y - lowY * shares, highX - lowX);
      return Fraction.of(Math.addExact(whole, rest), Math.multiplyExact(rise, shares));
    } catch (ArithmeticException tooLarge) {
      return widely(y, BigInteger.valueOf(shares), BigInteger.valueOf(rise));
    }
  }

  private Fraction widely(long y, BigInteger shares, BigInteger rise) {
    BigInteger whole = BigInteger.valueOf(lowX).multiply(rise).multiply(shares);
    BigInteger above = BigInteger.valueOf(y).subtract(BigInteger.valueOf(lowY).multiply(shares));
    BigInteger rest = above.multiply(BigInteger.valueOf(highX - lowX));
    return Fraction.of(whole.add(rest), rise.multiply(shares));
  }
}
