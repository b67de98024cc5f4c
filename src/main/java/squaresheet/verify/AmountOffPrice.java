package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is an amount in an estimator's own table its quantity times its price? */
final class AmountOffPrice implements Check<BoundValue> {

  private static final CheckInfo INFO = new CheckInfo(
      "amount-off-price", Severity.ERROR, "An amount is not its quantity times its price");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(BoundValue value) {
    boolean off = value.kind() == BoundValue.Kind.LINE && value.isHeld() && !value.isRight();
    return off ? Stream.of(value.says(INFO)) : Stream.empty();
  }
}
