package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Inference.Kind;

/** Is an area seen from above added to one on the slope? */
final class PlanAddedToSloped implements Check<MeasuredCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "plan-added-to-sloped", Severity.WARNING, "Plan area and sloped area are added");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(MeasuredCell cell) {
    return cell.clashes(Kind.SIDES).limit(1).map(clash -> cell.says(INFO, clash));
  }
}
