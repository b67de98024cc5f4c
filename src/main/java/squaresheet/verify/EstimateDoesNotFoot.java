package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.units.Money;

/** Do the lines of the estimate add up to its total? */
final class EstimateDoesNotFoot implements Check<Priced> {

  private static final CheckInfo INFO = new CheckInfo(
      "estimate-does-not-foot", Severity.ERROR, "The total is not the sum of the lines");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Priced priced) {
    Money total = priced.cells().money("estimate_total");
    Money lines = priced.sumOfLines();
    return total.equals(lines) ? Stream.empty() : Stream.of(says(priced, total, lines));
  }

  private static Finding says(Priced priced, Money total, Money lines) {
    String left = priced.cells().lines().stream()
        .filter(
            line -> line.amount().equals(lines.minus(total)) && !line.amount().isZero())
        .map(line -> "; it is exactly that without '" + line.item() + "'")
        .findFirst()
        .orElse("");
    String says = "is " + total.show() + ", but the lines add up to " + lines.show() + left;
    return Says.about(
        INFO, priced.book(), priced.at("estimate_total"), PricedLine.value(lines), says);
  }
}
