package squaresheet.verify;

import java.math.BigDecimal;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Is overhead or markup typed as 12 where 0.12 is meant? */
final class RateTypedAsPercent implements Check<EstimateCells> {

  private static final CheckInfo INFO = new CheckInfo(
      "rate-typed-as-percent", Severity.WARNING, "A rate put on the cost is more than the cost");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(EstimateCells cells) {
    return Stream.of("overhead_rate", "profit_rate")
        .filter(name -> name.equals("overhead_rate")
            || !cells.text("profit_kind", 0).equalsIgnoreCase("margin"))
        .filter(name -> cells.number(name, 0).compareTo(BigDecimal.ONE) > 0)
        .map(name -> says(cells, name));
  }

  private static Finding says(EstimateCells cells, String name) {
    double typed = cells.number(name, 0).doubleValue();
    String says = "is a " + name.replace('_', ' ') + " of " + Shown.number(typed * 100)
        + " percent; more than the cost itself is possible, but seldom meant: "
        + Shown.number(typed) + " percent is "
        + Shown.number(typed / 100);
    return Says.about(
        INFO, cells.book(), cells.at(name, 0).orElseThrow(), new Value.Number(typed / 100), says);
  }
}
