package squaresheet.formula;

/**
 * How many cells formulas may look at before the rest counts as not checked. Roofing workbooks look at a few thousand; what
 * looks at more than this is made to keep a program busy, or far too large for a pass that a person waits for.
 */
final class Effort {

  /** Some seconds of work on a machine of no great speed. */
  static final long MOST = 150_000_000;

  private static final String REASON = "the formulas before it look at " + MOST / 1_000_000
      + " million cells already, and this workbook is not worked out any further";

  private long left = MOST;
  private boolean spent;

  /** Counts one look. */
  void spend() {
    if (--left < 0) {
      spent = true;
      throw Signal.notChecked(REASON);
    }
  }

  /** Whether something was not worked out for it since it was counted anew. */
  boolean isSpent() {
    return spent;
  }

  /** Whether a value is not known because the limit was reached. */
  static boolean isReason(Value value) {
    return value instanceof Value.NotChecked unknown && unknown.reason().equals(REASON);
  }

  void again() {
    left = MOST;
    spent = false;
  }
}
