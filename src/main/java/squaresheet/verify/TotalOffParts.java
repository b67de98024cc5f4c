package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is a total in an estimator's own layout what its parts make? */
final class TotalOffParts implements Check<BoundValue> {

  private static final CheckInfo INFO =
      new CheckInfo("total-off-parts", Severity.ERROR, "A total is not what its parts make");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(BoundValue value) {
    boolean off = value.kind() == BoundValue.Kind.TOTAL && value.isHeld() && !value.isRight();
    return off ? Stream.of(value.says(INFO)) : Stream.empty();
  }
}
