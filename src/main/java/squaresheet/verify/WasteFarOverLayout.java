package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does a typed waste rate order shingles that neither the course layout takes nor the spare covers? */
final class WasteFarOverLayout implements Check<Allowance> {

  private static final CheckInfo INFO = new CheckInfo(
      "waste-far-over-layout",
      Severity.NOTE,
      "A waste rate orders far more than the course layout takes");

  /** So near a whole percent is that percent: 0.07 may be spelled 0.07000000000000001. */
  private static final double SAME = 1e-9;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Allowance allowance) {
    double enough = toPercent(allowance.simulated() + allowance.spare());
    long packs = -allowance.packsAt(enough);
    boolean over = allowance.rate() > enough && packs > 0;
    return over ? Stream.of(says(allowance, enough, packs)) : Stream.empty();
  }

  /** Rates are typed in whole percent, so that is how finely they are judged. */
  private static double toPercent(double rate) {
    return Math.ceil(rate * 100 - SAME) / 100;
  }

  private static Finding says(Allowance allowance, double enough, long packs) {
    String says = "is a waste rate of " + Shown.number(allowance.rate())
        + ", but laying out every course of " + allowance.covers() + " takes "
        + Shown.number(allowance.simulated()) + ", and with "
        + Shown.number(allowance.spare()) + " spare " + Shown.number(enough)
        + " is enough; the rest buys " + Says.count(packs, "bundle") + " that nobody lays";
    return allowance.says(INFO, "at most " + Shown.number(enough), enough, says);
  }
}
