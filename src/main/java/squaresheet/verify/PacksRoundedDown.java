package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Are packs to be ordered cut down to a whole number? */
final class PacksRoundedDown implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("packs-rounded-down", Severity.WARNING, "Whole packs are rounded down");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return PackRounding.in(cell, "ROUNDDOWN", "INT", "TRUNC", "FLOOR").map(PacksRoundedDown::says);
  }

  private static Finding says(PackRounding packs) {
    String says = "is " + packs.cell().shown() + ": " + Shown.number(packs.need())
        + " is needed, and rounded down the order is short; round up with ROUNDUP to "
        + Shown.number(packs.up());
    return Says.about(
        INFO, packs.cell().book(), packs.cell().at(), new Value.Number(packs.up()), says);
  }
}
