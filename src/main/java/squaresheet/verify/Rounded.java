package squaresheet.verify;

/** Tells whether a number is another one, rounded by whoever made the sheet: to decimals, or to halves, thirds, quarters. */
final class Rounded {

  private static final double[] STEPS = {
    1, 1 / 2.0, 1 / 3.0, 1 / 4.0, 0.1, 0.05, 0.01, 1e-3, 1e-4, 1e-5, 1e-6
  };

  /** Rounding down or to nearest takes away at most this share before it is no rounding but a loss. */
  private static final double LOSS = 0.005;

  /** A number that misses a whole step by so little is the whole step. */
  private static final double SAME = 1e-7;

  private Rounded() {}

  static boolean is(double rounded, double exact) {
    if (Math.abs(rounded - exact) <= SAME * Math.max(1, Math.abs(exact))) {
      return true;
    }
    boolean lost = Math.abs(rounded) < Math.abs(exact) * (1 - LOSS);
    for (double step : STEPS) {
      boolean whole = Math.abs(rounded / step - Math.rint(rounded / step)) < SAME;
      if (whole && Math.abs(rounded - exact) < step) {
        return !lost || Math.abs(rounded - exact) <= Math.min(step / 2, 0.05) + SAME;
      }
    }
    return false;
  }
}
