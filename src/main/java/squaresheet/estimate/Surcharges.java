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
    Money overhead = sum().times(terms.overhead()).toCents();
    add(Category.Known.OVERHEAD, terms.codes().overhead(), overhead, terms.overhead() + " of cost");
    Money price = terms.profit().priceOf(sum()).toCents();
    add(
        Category.Known.PROFIT,
        terms.codes().profit(),
        price.minus(sum()),
        terms.profit().toString());
    Estimate.Taxes taxes = discountAndTax(price);
    lines.sort(Comparator.comparing(Line::category, Category.order()));
    return new Estimate(lines, terms, taxes, payments(sum()));
  }

  private Estimate.Taxes discountAndTax(Money price) {
    Discount discount = terms.discount();
    Money offBefore = discount.beforeTax() ? discount.off(price) : zero();
    Estimate.Taxes taxes = taxes(price, offBefore);
    boolean byLine = terms.tax().rounding() == RoundingPoint.LINE;
    Money tax = byLine ? taxes.byLine() : taxes.byInvoice();
    Money off = discount.beforeTax() ? offBefore : discount.off(price.plus(tax));
    String when = discount.beforeTax() ? "before tax" : "after tax";
    add(Category.Known.DISCOUNT, terms.codes().discount(), off.negated(), when);
    add(Category.Known.TAX, terms.codes().tax(), tax, terms.tax().toString());
    return taxes;
  }

  private Money zero() {
    return Money.zero(terms.currency());
  }

  private Money sum() {
    return lines.stream().map(Line::amount).reduce(zero(), Money::plus);
  }

  private void add(Category category, String code, Money amount, String basis) {
    if (!amount.isZero()) {
      String item = category.toString();
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
