package squaresheet.verify;

import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;
import squaresheet.sheet.Sheet;

/** Is the price of the job lower than what it costs? */
final class PriceBelowCost implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("price-below-cost", Severity.WARNING, "The price is below the cost");

  private static final Pattern PRICE = Pattern.compile(
      "(selling |sale |bid |quote |contract )?price|selling price|bid", Pattern.CASE_INSENSITIVE);
  private static final Pattern COST =
      Pattern.compile("(total |job |our )?costs?|cost total", Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return COST.matcher(cell.label()).matches()
            && cell.tab().tableAt(cell.at().ref()).isEmpty()
        ? prices(cell).limit(1)
        : Stream.empty();
  }

  private static Stream<Finding> prices(FormulaCell cost) {
    double least = cost.book().number(cost.at()).orElse(0);
    return cost.tab()
        .sheet()
        .cells()
        .map(Sheet.Placed::ref)
        .filter(ref -> PRICE.matcher(cost.tab().label(ref)).matches()
            && cost.tab().tableAt(ref).isEmpty())
        .filter(
            ref -> !cost.tab().rowText(ref.row()).toLowerCase(Locale.ROOT).contains("promotion"))
        .map(cost.tab()::at)
        .filter(price -> cost.book().number(price).orElse(least) < least)
        .map(price -> says(cost, price));
  }

  private static Finding says(FormulaCell cost, Address price) {
    String says = "is the price, " + Shown.of(cost.book().value(price)) + ", but the cost at "
        + cost.at() + " is " + Shown.of(cost.value());
    return Says.about(INFO, cost.book(), price, says);
  }
}
