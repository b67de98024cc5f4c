package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Inference.Kind;

/** Is a percentage such as 10 used where 0.10 is meant? */
final class PercentUsedAsRatio implements Check<MeasuredCell> {

  private static final CheckInfo INFO =
      new CheckInfo("percent-used-as-ratio", Severity.WARNING, "A percentage is used as a ratio");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(MeasuredCell cell) {
    return cell.clashes(Kind.PERCENT).limit(1).map(clash -> cell.says(INFO, clash));
  }
}
