package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.estimate.Category;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.units.Money;

/** Is the total before tax lower than what the job costs? */
final class SoldBelowCost implements Check<Priced> {

  private static final CheckInfo INFO =
      new CheckInfo("sold-below-cost", Severity.WARNING, "The price is below the cost");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Priced priced) {
    Money price = priced.model().total().minus(priced.should(Category.Known.TAX));
    Money cost = priced.model().cost();
    return price.compareTo(cost) < 0 ? Stream.of(says(priced, price, cost)) : Stream.empty();
  }

  private static Finding says(Priced priced, Money price, Money cost) {
    String says = "leaves " + price.show() + " before tax for a job that costs " + cost.show();
    return Says.about(INFO, priced.book(), priced.at("estimate_total"), says);
  }
}
