package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is a markup put on a price that has it already? */
final class MarkupTwice implements Check<RateUse> {

  private static final CheckInfo INFO =
      new CheckInfo("markup-twice", Severity.WARNING, "A markup is put on twice");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(RateUse use) {
    return RateTwice.of(use, Rate.Kind.MARKUP, INFO, "the markup", "a price that is marked up");
  }
}
