package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.estimate.Category;
import squaresheet.estimate.Profit;
import squaresheet.estimate.Terms;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.units.Money;

/** Do the terms make what stands for overhead, profit, discount and tax? */
final class SurchargeOffTerms implements Check<Priced> {

  private static final CheckInfo INFO = new CheckInfo(
      "surcharge-off-terms",
      Severity.ERROR,
      "Overhead, profit, discount or tax is not what the terms say");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Priced priced) {
    return Stream.of(
            Category.Known.OVERHEAD,
            Category.Known.PROFIT,
            Category.Known.DISCOUNT,
            Category.Known.TAX)
        .filter(category -> !priced.there(category).equals(priced.should(category)))
        .filter(category -> priced.line(category).isPresent())
        .limit(1)
        .map(category -> says(priced, category));
  }

  private static Finding says(Priced priced, Category.Known category) {
    String says = "is " + priced.there(category).show() + " for " + category
        + ", but the terms make " + priced.should(category).show() + " (" + term(priced, category)
        + ")" + slip(priced, category);
    return Says.about(
        INFO,
        priced.book(),
        priced.line(category).orElseThrow().at("line_amount"),
        PricedLine.value(priced.should(category)),
        says);
  }

  private static String term(Priced priced, Category.Known category) {
    return switch (category) {
      case OVERHEAD -> priced.model().terms().overhead() + " of the cost";
      case PROFIT -> priced.model().terms().profit().toString();
      case TAX -> priced.model().terms().tax().toString();
      default -> priced.model().terms().discount().beforeTax() ? "before tax" : "after tax";
    };
  }

  private static String slip(Priced priced, Category.Known category) {
    Terms terms = priced.model().terms();
    Money base = priced.model().cost().plus(priced.should(Category.Known.OVERHEAD));
    Money there = priced.there(category);
    if (category == Category.Known.PROFIT) {
      boolean markup = there.equals(base.times(terms.profit().stated()).toCents());
      return markup && terms.profit() instanceof Profit.Margin
          ? "; it is exactly that with the margin put on the cost like a markup"
          : "";
    }
    return category == Category.Known.TAX ? taxSlip(priced, terms, there) : "";
  }

  private static String taxSlip(Priced priced, Terms terms, Money there) {
    for (Category more : priced.model().byCategory().keySet()) {
      Money wider = priced.should(more).times(terms.tax().rate());
      boolean untaxed = !terms.tax().taxed().contains(more) && more.isBeforeDiscount();
      if (untaxed
          && !wider.isZero()
          && there.equals(priced.should(Category.Known.TAX).plus(wider).toCents())) {
        return "; it is exactly that with " + more + " taxed too";
      }
    }
    boolean all = there.equals(priced.model().price().times(terms.tax().rate()).toCents());
    return all ? "; it is exactly that with everything taxed" : "";
  }
}
