package squaresheet.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.takeoff.Takeoff;
import squaresheet.units.Money;
import squaresheet.units.Ratio;

/**
 * A priced job. Every line is whole cents, so the lines foot to the total, by category and by cost code alike.
 *
 * @param lines in the order of their categories
 * @param terms what was put on and taken off, and how it is paid
 * @param taxes the tax, rounded both ways
 * @param payments what is due when, together the total
 */
public record Estimate(List<Line> lines, Terms terms, Taxes taxes, List<Payment> payments) {

  public Estimate {
    lines = List.copyOf(lines);
    payments = List.copyOf(payments);
  }

  /**
   * The tax rounded on every line, and once on the sum; the terms say which is charged.
   *
   * @param byLine rounded on every line
   * @param byInvoice rounded once
   */
  public record Taxes(Money byLine, Money byInvoice) {

    /** By how much rounding on every line is more. */
    public Money difference() {
      return byLine.minus(byInvoice);
    }
  }

  /**
   * A payment.
   *
   * @param when what it falls due on
   * @param share of the total
   * @param amount in whole cents
   */
  public record Payment(String when, Ratio share, Money amount) {}

  /** Prices a takeoff. What has no price or no rate is left out and said. */
  public static Read<Estimate> of(Takeoff takeoff, PriceList prices, Rates rates, Terms terms) {
    List<Finding> findings = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    MaterialLines materials = new MaterialLines(takeoff, prices);
    lines.addAll(materials.lines());
    findings.addAll(materials.findings());
    RateLines work = new RateLines(takeoff, rates, terms.currency());
    lines.addAll(work.lines());
    findings.addAll(work.findings());
    findings.addAll(new OwnCategories(prices, rates, terms.tax()).of(lines));
    Estimate estimate = of(lines, terms);
    estimate.negativeTotal().ifPresent(findings::add);
    return Read.of(estimate, findings);
  }

  private Optional<Finding> negativeTotal() {
    if (total().amount().signum() >= 0) {
      return Optional.empty();
    }
    String says =
        "a discount of " + sum(lines(Category.Known.DISCOUNT)).negated().show()
            + " must be no more than the price, " + price().show() + ", but leaves the customer "
            + total().show();
    return Optional.of(new Finding(
        Complaints.DISCOUNT_OVER_PRICE, new Where.OfItem("job", "estimate_total"), says));
  }

  /** Puts overhead, profit, discount and tax on lines of cost. */
  public static Estimate of(List<Line> costs, Terms terms) {
    return new Surcharges(costs, terms).estimate();
  }

  /** What the customer pays: the sum of all lines. */
  public Money total() {
    return sum(lines);
  }

  /** What the job costs the company, before overhead. */
  public Money cost() {
    return sum(lines.stream().filter(line -> line.category().isCost()).toList());
  }

  /** The price before discount and tax. */
  public Money price() {
    return sum(lines.stream().filter(line -> line.category().isBeforeDiscount()).toList());
  }

  /** The lines of one category. */
  public List<Line> lines(Category category) {
    return lines.stream().filter(line -> line.category().equals(category)).toList();
  }

  /** Footing: the sum of the lines of each category that has any. */
  public Map<Category, Money> byCategory() {
    Map<Category, Money> sums = new TreeMap<>(Category.order());
    lines.forEach(line -> sums.merge(line.category(), line.amount(), Money::plus));
    return sums;
  }

  /** Cross-footing: the sum of the lines of each cost code, in the order of the codes. */
  public Map<String, Money> byCostCode() {
    Map<String, Money> sums = new TreeMap<>();
    lines.forEach(line -> sums.merge(line.costCode(), line.amount(), Money::plus));
    return sums;
  }

  private Money sum(List<Line> some) {
    return some.stream().map(Line::amount).reduce(Money.zero(terms.currency()), Money::plus);
  }
}
