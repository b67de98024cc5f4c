package squaresheet.verify;

import java.math.BigDecimal;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Is the tax rate typed as 7.25 where 0.0725 is meant? */
final class TaxTypedAsPercent implements Check<EstimateCells> {

  private static final CheckInfo INFO = new CheckInfo(
      "tax-typed-as-percent", Severity.ERROR, "A tax rate is typed as a percentage of 1");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(EstimateCells cells) {
    return Stream.of("tax_rate")
        .filter(name -> cells.number(name, 0).compareTo(BigDecimal.ONE) > 0)
        .map(name -> says(cells, name));
  }

  private static Finding says(EstimateCells cells, String name) {
    double typed = cells.number(name, 0).doubleValue();
    String says = "is a " + name.replace('_', ' ') + " of " + Shown.number(typed * 100)
        + " percent; a tax must be less than what it is put on: " + Shown.number(typed)
        + " percent is "
        + Shown.number(typed / 100);
    return Says.about(
        INFO, cells.book(), cells.at(name, 0).orElseThrow(), new Value.Number(typed / 100), says);
  }
}
