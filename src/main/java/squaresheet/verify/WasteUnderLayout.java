package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does a typed waste rate order fewer shingles than laying out every course takes? */
final class WasteUnderLayout implements Check<Allowance> {

  private static final CheckInfo INFO = new CheckInfo(
      "waste-under-layout",
      Severity.WARNING,
      "A waste rate orders less than the course layout takes");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Allowance allowance) {
    long packs = allowance.packsAt(allowance.simulated());
    boolean under = allowance.rate() < allowance.simulated() && packs > 0;
    return under ? Stream.of(says(allowance, packs)) : Stream.empty();
  }

  private static Finding says(Allowance allowance, long packs) {
    String simulated = Shown.number(allowance.simulated());
    String says = "is a waste rate of " + Shown.number(allowance.rate())
        + ", but laying out every course of " + allowance.covers() + " takes " + simulated
        + ", so the order is " + Says.count(packs, "bundle") + " short";
    return allowance.says(INFO, "at least " + simulated, allowance.simulated(), says);
  }
}
