package squaresheet.geometry;

/**
 * A side that is not level, from its lower to its upper end, in units.
 *
 * @param lowX x of the lower end
 * @param lowY y of the lower end
 * @param highX x of the upper end
 * @param highY y of the upper end, more than that of the lower
 */
record Edge(long lowX, long lowY, long highX, long highY) {

  static Edge between(Point a, Point b) {
    return a.y().units() <= b.y().units()
        ? new Edge(a.x().units(), a.y().units(), b.x().units(), b.y().units())
        : between(b, a);
  }

  boolean isLevel() {
    return lowY == highY;
  }

  /** Where the edge passes {@code y}, which lies between its ends. Within 1 km every whole y stays within a long. */
  Fraction xAt(Fraction y) {
    long rise = highY - lowY;
    long run = highX - lowX;
    if (run == 0) {
      return Fraction.of(lowX);
    }
    if (y.isWhole()) {
      return Fraction.of(lowX * rise + (y.floor() - lowY) * run, rise);
    }
    return y.minus(Fraction.of(lowY)).times(Fraction.of(run, rise)).plus(Fraction.of(lowX));
  }

  /** Whether the edge reaches from {@code low} to {@code high} or past them. */
  boolean spans(Fraction low, Fraction high) {
    return Fraction.of(lowY).compareTo(low) <= 0 && Fraction.of(highY).compareTo(high) >= 0;
  }
}
