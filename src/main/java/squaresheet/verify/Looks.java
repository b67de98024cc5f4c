package squaresheet.verify;

import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/**
 * How often a check may look at cells, and at who reads them, before it is stopped. Workbooks that people fill need a few
 * looks for each of their cells; what needs far more grows with the square of its length. What is counted is work and not
 * time, so that the same workbook is told the same everywhere.
 */
final class Looks {

  /** Each check may look so often in any workbook: about a second of work. */
  private static final long AT_LEAST = 2_000_000;

  /** And so often for each cell that holds something. */
  private static final long FOR_A_CELL = 40;

  private final long most;
  private long left;

  /** A check has looked more often than it may. */
  static final class Spent extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Spent() {
      super("looked too often", null, false, false);
    }
  }

  Looks(Workbook workbook) {
    most = AT_LEAST
        + FOR_A_CELL * workbook.sheets().stream().mapToLong(Sheet::size).sum();
    free();
  }

  /** Counts looks. */
  void spend(long looks) {
    left -= looks;
    if (left < 0) {
      throw new Spent();
    }
  }

  /** Begins to count anew, for the next check. */
  void again() {
    left = most;
  }

  /** Counts no more: what is done before and after the checks goes through the workbook a few times at most. */
  final void free() {
    left = Long.MAX_VALUE;
  }
}
