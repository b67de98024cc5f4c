package squaresheet.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Takeoff;
import squaresheet.units.Money;
import squaresheet.units.Unit;

/** Lines of work and hire: for every rate, so much of its quantity as lies in its band. */
final class RateLines {

  private final Takeoff takeoff;
  private final Rates rates;
  private final String currency;
  private final double stories;
  private final List<Line> lines = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  RateLines(Takeoff takeoff, Rates rates, String currency) {
    this.takeoff = takeoff;
    this.rates = rates;
    this.currency = currency;
    this.stories = takeoff.number("building_stories").orElse(1.0);
    Rates.works(rates.rates()).forEach(this::work);
  }

  List<Line> lines() {
    return lines;
  }

  List<Finding> findings() {
    return findings;
  }

  private void says(CheckInfo card, Where where, String sentence) {
    findings.add(new Finding(card, where, sentence));
  }

  /** Rates of one item and quantity, which share the work between them. */
  private void work(List<Rate> all) {
    Rate first = all.get(0);
    String name = first.quantity();
    Optional<Rule> rule = takeoff.rulebook().rule(name);
    if (!name.isEmpty() && rule.isEmpty()) {
      says(
          Complaints.RATE_MISSING,
          first.at("quantity"),
          "no quantity '" + name + "' for the rate of " + first.item()
              + takeoff.rulebook().nearest(name));
      return;
    }
    if (!isByPlane(rule)) {
      all.forEach(this::limitsNothing);
    }
    List<Rate> high =
        all.stream().filter(rate -> rate.band().holdsStories(stories)).toList();
    Map<Rate, BigDecimal> shares = new LinkedHashMap<>();
    for (int row = 0; row < (name.isEmpty() ? 1 : takeoff.rows(name)); row++) {
      share(first, high, rule, row, shares);
    }
    shares.forEach((rate, quantity) -> line(rate, quantity, rule));
  }

  private static boolean isByPlane(Optional<Rule> rule) {
    return rule.filter(one -> one.per() == Rule.Per.PLANE).isPresent();
  }

  private void limitsNothing(Rate rate) {
    if (rate.band().limitsPitch()) {
      String what = rate.quantity().isEmpty() ? "it is paid once" : rate.quantity() + " is not";
      says(
          Complaints.RATE_NOT_READ,
          rate.at("quantity"),
          "the pitches of the rate of " + rate.item()
              + " must go with a quantity of each plane, such as plane_squares, but " + what
              + "; leave the pitches empty, or name such a quantity");
    }
  }

  private void share(
      Rate first, List<Rate> high, Optional<Rule> rule, int row, Map<Rate, BigDecimal> shares) {
    double quantity = rule.isEmpty() ? 1 : quantity(first, rule.get(), row);
    boolean byPlane = isByPlane(rule);
    double rise = byPlane ? takeoff.number("pitch_rise", row).orElse(0.0) : 0;
    List<Rate> fitting =
        high.stream().filter(rate -> !byPlane || rate.band().holdsPitch(rise)).toList();
    if (quantity == 0) {
      return;
    }
    if (fitting.size() == 1) {
      shares.merge(fitting.get(0), BigDecimal.valueOf(quantity), BigDecimal::add);
    } else {
      says(
          Complaints.RATE_MISSING,
          (fitting.isEmpty() ? first : fitting.get(1)).at("item"),
          "one rate of " + first.item() + " must fit "
              + (byPlane ? "a pitch of " + show(rise) + ":12 and " : "") + show(stories)
              + " stories, but " + fitting.size() + " do");
    }
  }

  /** Of what cannot be worked out there is nothing; an order that cannot is said by the takeoff already. */
  private double quantity(Rate rate, Rule rule, int row) {
    Optional<Double> number = takeoff.number(rule.name(), row);
    if (number.isEmpty() && rule.orders().isEmpty()) {
      says(
          Complaints.RATE_MISSING,
          new Where.OfItem("rate " + rate.item(), ""),
          rule.name() + " could not be worked out, so " + rate.item() + " is not priced");
    }
    return number.orElse(0.0);
  }

  private static String show(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  private void line(Rate rate, BigDecimal quantity, Optional<Rule> rule) {
    Unit unit = rule.map(Rule::unit).orElse(Unit.RATIO);
    Optional<Rate.Paid> paid = rate.paid(unit, currency);
    if (paid.isEmpty()) {
      says(Complaints.RATE_UNIT, rate.at("unit"), unitSentence(rate, unit));
      return;
    }
    String of = rule.map(one -> " of " + one.name()).orElse("");
    String basis = rate.amount().toPlainString() + " " + rate.unit() + of;
    BigDecimal size = BigDecimal.valueOf(paid.get().size());
    BigDecimal much = size.compareTo(BigDecimal.ONE) == 0 ? quantity : quantity.multiply(size);
    if (!rate.isHours()) {
      Unit bought = rule.isEmpty() ? Unit.parse("job") : paid.get().unit().over(rate.unit());
      add(rate, new Line.Quantity(much, bought), Money.of(currency, rate.amount()), basis);
      return;
    }
    rates
        .hour(rate.crew())
        .ifPresentOrElse(
            hour -> add(
                rate,
                new Line.Quantity(much.multiply(rate.amount()), paid.get().unit()),
                hour,
                basis),
            () -> says(
                Complaints.RATE_MISSING,
                rate.at("crew"),
                "no crew '" + rate.crew() + "' for the rate of " + rate.item()));
  }

  private void add(Rate rate, Line.Quantity quantity, Money price, String basis) {
    lines.add(Line.extended(rate.category(), rate.costCode(), rate.item(), quantity, price, basis));
  }

  private String unitSentence(Rate rate, Unit of) {
    String like = rate.isHours() ? "hour" : "$";
    String per = of.equals(Unit.RATIO) ? "" : "/" + of;
    String crew = rate.isHours() ? "" : " without a crew";
    return "the rate of " + rate.item() + crew + " must be in " + like + per + ", but is in "
        + rate.unit();
  }
}
