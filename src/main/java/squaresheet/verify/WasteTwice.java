package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is waste put on an amount that has it already? */
final class WasteTwice implements Check<RateUse> {

  private static final CheckInfo INFO =
      new CheckInfo("waste-twice", Severity.WARNING, "Waste is put on twice");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(RateUse use) {
    return RateTwice.of(use, Rate.Kind.WASTE, INFO, "waste", "an amount with waste");
  }
}
