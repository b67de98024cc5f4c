package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is a measure multiplied with a pitch factor that is in it already? */
final class PitchFactorTwice implements Check<RateUse> {

  private static final CheckInfo INFO =
      new CheckInfo("pitch-factor-twice", Severity.WARNING, "A pitch factor is put on twice");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(RateUse use) {
    return RateTwice.of(use, Rate.Kind.PITCH_FACTOR, INFO, "the pitch factor", "a slope measure");
  }
}
