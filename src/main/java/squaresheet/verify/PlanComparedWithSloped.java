package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Inference.Kind;

/** Is an area seen from above compared with one on the slope, or subtracted? */
final class PlanComparedWithSloped implements Check<MeasuredCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "plan-compared-with-sloped", Severity.NOTE, "Plan area and sloped area are compared");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(MeasuredCell cell) {
    return cell.clashes(Kind.SIDES_COMPARED).limit(1).map(clash -> cell.says(INFO, clash));
  }
}
