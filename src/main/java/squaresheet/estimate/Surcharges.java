package squaresheet.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import squaresheet.estimate.Tax.RoundingPoint;
import squaresheet.units.Money;

/** Puts on costs what is put on, takes off what is taken off, each a line in whole cents. */
final class Surcharges {

  private final Terms terms;
  private final List<Line> lines = new ArrayList<>();

  Surcharges(List<Line> costs, Terms terms) {
    this.terms = terms;
    lines.addAll(costs);
  }

  Estimate estimate() {
    Money cost = sum();
    Money overhead = cost.times(terms.overhead()).toCents();
    add(Category.OVERHEAD, terms.codes().overhead(), "Overhead", overhead, terms.overhead() + " of cost");
    Money price = terms.profit().priceOf(sum()).toCents();
    add(Category.PROFIT, terms.codes().profit(), "Profit", price.minus(sum()), terms.profit().toString());
    Money offBefore = terms.discount().beforeTax() ? terms.discount().off(price) : zero();
    Estimate.Taxes taxes = taxes(price, offBefore);
    Money tax = terms.tax().rounding() == RoundingPoint.LINE ? taxes.byLine() : taxes.byInvoice();
    Money off = terms.discount().beforeTax() ? offBefore : terms.discount().off(price.plus(tax));
    add(Category.DISCOUNT, terms.codes().discount(), "Discount", off.negated(),
        terms.discount().beforeTax() ? "before tax" : "after tax");
    add(Category.TAX, terms.codes().tax(), "Sales tax", tax,
        terms.tax().rate() + " on " + terms.tax().taxed() + ", rounded by " + terms.tax().rounding());
    lines.sort(Comparator.comparing(Line::category));
    return new Estimate(lines, terms, taxes, payments(sum()));
  }

  private Money zero() {
    return Money.zero(terms.currency());
  }

  private Money sum() {
    return lines.stream().map(Line::amount).reduce(zero(), Money::plus);
  }

  private void add(Category category, String code, String item, Money amount, String basis) {
    if (!amount.isZero()) {
      lines.add(new Line(category, code, item, Line.Quantity.once(), amount, amount, basis));
    }
  }

  /** A discount before tax takes its share off every taxed line alike. */
  private Estimate.Taxes taxes(Money price, Money off) {
    BigDecimal left = price.isZero()
        ? BigDecimal.ONE
        : price.minus(off).dividedBy(price.amount()).amount();
    List<Money> taxed = lines.stream()
        .filter(line -> terms.tax().taxed().contains(line.category()))
        .map(line -> line.amount().times(left))
        .toList();
    return new Estimate.Taxes(
        terms.tax().on(taxed, terms.currency(), RoundingPoint.LINE),
        terms.tax().on(taxed, terms.currency(), RoundingPoint.INVOICE));
  }

  /** The last payment takes what rounding leaves, so that the payments foot to the total. */
  private List<Estimate.Payment> payments(Money total) {
    List<Estimate.Payment> payments = new ArrayList<>();
    Money rest = total;
    for (int i = 0; i < terms.payments().size(); i++) {
      Terms.Share share = terms.payments().get(i);
      boolean last = i == terms.payments().size() - 1;
      Money amount = last ? rest : total.times(share.share()).toCents();
      payments.add(new Estimate.Payment(share.when(), share.share(), amount));
      rest = rest.minus(amount);
    }
    return payments;
  }
}
