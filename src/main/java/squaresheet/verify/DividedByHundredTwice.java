package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Inference.Kind;

/** Are squares divided by 100, which made them squares already? */
final class DividedByHundredTwice implements Check<MeasuredCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "divided-by-hundred-twice", Severity.WARNING, "Squares are divided by 100 once more");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(MeasuredCell cell) {
    return cell.clashes(Kind.TWICE).limit(1).map(clash -> cell.says(INFO, clash));
  }
}
