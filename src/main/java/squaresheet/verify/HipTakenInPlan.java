package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Is the length of a hip or valley its length in plan? */
final class HipTakenInPlan implements Check<HipLine> {

  private static final CheckInfo INFO = new CheckInfo(
      "hip-taken-in-plan", Severity.WARNING, "A hip or valley has its length in plan");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(HipLine line) {
    return line.isTimes(1) ? Stream.of(says(line)) : Stream.empty();
  }

  private static Finding says(HipLine line) {
    String says = "is the length in plan; at " + Shown.number(line.rise())
        + ":12 a hip or valley over a square corner is " + Shown.number(line.onSlope())
        + " on the roof, if " + Shown.number(line.plan()) + " is its own length in plan";
    return Says.about(INFO, line.book(), line.at(), new Value.Number(line.onSlope()), says);
  }
}
