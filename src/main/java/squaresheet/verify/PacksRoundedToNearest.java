package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Are packs to be ordered rounded to the nearest whole number? */
final class PacksRoundedToNearest implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "packs-rounded-to-nearest", Severity.WARNING, "Whole packs are rounded to the nearest");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return PackRounding.in(cell, "ROUND", "MROUND").map(PacksRoundedToNearest::says);
  }

  private static Finding says(PackRounding packs) {
    String now = packs.isShort()
        ? "; today the order is short by " + Shown.number(packs.up() - packs.now())
        : "; today it comes out right, with other numbers the order is short";
    String says = "is " + packs.cell().shown() + ": " + Shown.number(packs.need())
        + " is needed, and packs must be rounded up with ROUNDUP to " + Shown.number(packs.up())
        + now;
    return Says.about(
        INFO, packs.cell().book(), packs.cell().at(), new Value.Number(packs.up()), says);
  }
}
