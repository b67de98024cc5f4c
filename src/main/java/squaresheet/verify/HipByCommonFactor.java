package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Is the length of a hip or valley worked out with the factor of a common rafter? */
final class HipByCommonFactor implements Check<HipLine> {

  private static final CheckInfo INFO = new CheckInfo(
      "hip-by-common-factor",
      Severity.WARNING,
      "A hip or valley has the factor of a common rafter");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(HipLine line) {
    return line.isTimes(line.common()) ? Stream.of(says(line)) : Stream.empty();
  }

  private static Finding says(HipLine line) {
    String says = "is the length in plan times " + Shown.number(line.common())
        + ", the factor of a common rafter at " + Shown.number(line.rise())
        + ":12; a hip or valley over a square corner takes "
        + Shown.number(line.onSlope() / line.plan()) + " on its own length in plan, and "
        + Shown.number(Math.sqrt(1 + line.common() * line.common()))
        + " on the run of the common rafter";
    return Says.about(INFO, line.book(), line.at(), new Value.Number(line.onSlope()), says);
  }
}
