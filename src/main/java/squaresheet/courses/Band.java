package squaresheet.courses;

import squaresheet.geometry.Fraction;

/**
 * The stretch up the slope that a course's shingles take, in shares of a unit: an exposure of 28 in over five courses is no
 * whole number of units, but five of its courses are.
 *
 * @param low the lower edge, in shares
 * @param high the upper edge, in shares; more than the lower
 * @param shares how many shares make a unit
 */
record Band(long low, long high, long shares) {

  Fraction bottom() {
    return Fraction.of(low, shares);
  }

  Fraction top() {
    return Fraction.of(high, shares);
  }

  /** Whether it has some height in common with the stretch between two whole heights. */
  boolean meets(long from, long to) {
    return low < Math.multiplyExact(to, shares) && high > Math.multiplyExact(from, shares);
  }
}
