package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is a value of a plane in an estimator's own table what its dimensions and pitch make? */
final class PlaneValueOffDimensions implements Check<BoundValue> {

  private static final CheckInfo INFO = new CheckInfo(
      "plane-value-off-dimensions",
      Severity.ERROR,
      "A value of a plane is not what its dimensions and pitch make");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(BoundValue value) {
    boolean off = value.kind() == BoundValue.Kind.PLANE && value.isHeld() && !value.isRight();
    return off ? Stream.of(value.says(INFO)) : Stream.empty();
  }
}
