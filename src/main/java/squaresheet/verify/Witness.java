package squaresheet.verify;

/** Where it is known from what a cell should hold. Two of these are two sources; two checks of one are not. */
enum Witness {
  /** The formula that the other rows of the column have. */
  OTHER_ROWS(
      "the other rows",
      "typed-over-formula",
      "formula-cleared-in-row",
      "reference-off-by-one",
      "odd-formula-in-run"),
  /** What the headings say that it is made of. */
  HEADINGS("the headings", "plane-value-off-dimensions", "amount-off-price", "total-off-parts"),
  /** The amounts that it stands under. */
  PARTS("the parts above it", "typed-total-off", "total-stops-short", "totals-do-not-cross-foot"),
  /** The formula of a like cell close by. */
  LIKE_CELL("a like cell close by"),
  /** What stands there: it is the right number with a slip of the fingers. */
  SLIP("the digits there"),
  /** The text of the cell itself. */
  TEXT("its own text", "formula-stored-as-text");

  private final String called;
  /** The ids of its checks, parted by bars. */
  private final String checks;

  Witness(String called, String... checks) {
    this.called = called;
    this.checks = "|" + String.join("|", checks) + "|";
  }

  /** Whether a check speaks for it. */
  boolean says(String check) {
    return checks.contains("|" + check + "|");
  }

  @Override
  public String toString() {
    return called;
  }
}
