package squaresheet.xlsx;

/** How much memory a workbook may take once read: a part of what this program was given. */
final class Budget {

  /** What is left is needed for unpacking, and by whoever asked. */
  private static final double SHARE = 0.45;

  private long left = (long) (Runtime.getRuntime().maxMemory() * SHARE);

  void spend(long bytes) {
    left -= bytes;
    if (left < 0) {
      throw Refusal.ofAll("holds more than fits into the memory given to this program ("
          + (Runtime.getRuntime().maxMemory() >> 20) + " MB)");
    }
  }
}
