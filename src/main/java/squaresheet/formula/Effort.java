package squaresheet.formula;

/**
 * How many cells formulas may look at before the rest counts as not checked. Roofing workbooks look at a few thousand; what
 * looks at more than this is made to keep a program busy, or far too large for a pass that a person waits for.
 */
final class Effort {

  /** Some seconds of work on a machine of no great speed. */
  static final long MOST = 150_000_000;

  private static final String MILLIONS = MOST / 1_000_000 + " million";

  private long left = MOST;

  /** Counts one look. */
  void spend() {
    if (--left < 0) {
      throw Signal.notChecked("the formulas before it look at " + MILLIONS
          + " cells already, and this workbook is not worked out any further");
    }
  }

  void again() {
    left = MOST;
  }
}
