package squaresheet.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Takeoff;
import squaresheet.units.Money;
import squaresheet.units.Unit;

/** Lines of work and hire: for every rate, so much of its quantity as lies in its band. */
final class RateLines {

  private static final Unit HOUR = Unit.parse("hour");
  private static final Unit DOLLAR = Unit.parse("$");

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
    Map<String, List<Rate>> items = rates.rates().stream()
        .collect(Collectors.groupingBy(Rate::item, LinkedHashMap::new, Collectors.toList()));
    items.forEach(this::item);
  }

  List<Line> lines() {
    return lines;
  }

  List<Finding> findings() {
    return findings;
  }

  private void says(String item, String sentence) {
    says(Complaints.RATE_MISSING, item, sentence);
  }

  private void says(CheckInfo card, String item, String sentence) {
    findings.add(new Finding(card, new Where.OfItem("rate " + item, ""), sentence));
  }

  private void item(String item, List<Rate> all) {
    String name = all.get(0).quantity();
    Optional<Rule> rule = takeoff.rulebook().rule(name);
    if (!name.isEmpty() && rule.isEmpty()) {
      says(
          item,
          "no quantity '" + name + "' for the rate of " + item
              + takeoff.rulebook().nearest(name));
      return;
    }
    List<Rate> high =
        all.stream().filter(rate -> rate.band().holdsStories(stories)).toList();
    Map<Rate, BigDecimal> work = new LinkedHashMap<>();
    for (int row = 0; row < (name.isEmpty() ? 1 : takeoff.rows(name)); row++) {
      share(item, high, rule, row, work);
    }
    work.forEach((rate, quantity) -> line(rate, quantity, rule));
  }

  private void share(
      String item, List<Rate> high, Optional<Rule> rule, int row, Map<Rate, BigDecimal> work) {
    double quantity = rule.isEmpty() ? 1 : quantity(item, rule.get(), row);
    boolean byPlane = rule.filter(one -> one.per() == Rule.Per.PLANE).isPresent();
    double rise = byPlane ? takeoff.number("pitch_rise", row).orElse(0.0) : 0;
    List<Rate> fitting =
        high.stream().filter(rate -> !byPlane || rate.band().holdsPitch(rise)).toList();
    if (quantity == 0) {
      return;
    }
    if (fitting.size() == 1) {
      work.merge(fitting.get(0), BigDecimal.valueOf(quantity), BigDecimal::add);
    } else {
      says(
          item,
          "one rate of " + item + " must fit "
              + (byPlane ? "a pitch of " + show(rise) + ":12 and " : "") + show(stories)
              + " stories, but " + fitting.size() + " do");
    }
  }

  /** Of what cannot be worked out there is nothing; an order that cannot is said by the takeoff already. */
  private double quantity(String item, Rule rule, int row) {
    Optional<Double> number = takeoff.number(rule.name(), row);
    if (number.isEmpty() && rule.orders().isEmpty()) {
      says(item, rule.name() + " could not be worked out, so " + item + " is not priced");
    }
    return number.orElse(0.0);
  }

  private static String show(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  private void line(Rate rate, BigDecimal quantity, Optional<Rule> rule) {
    Unit unit = rule.map(Rule::unit).orElse(Unit.RATIO);
    Unit paid = rate.unit().times(unit);
    Optional<Unit> fitting = wanted(rate).filter(paid::isLike).findFirst();
    if (fitting.isEmpty()) {
      says(Complaints.RATE_UNIT, rate.item(), unitSentence(rate, unit));
      return;
    }
    String of = rule.map(one -> " of " + one.name()).orElse("");
    String basis = rate.amount().toPlainString() + " " + rate.unit() + of;
    BigDecimal size = BigDecimal.valueOf(paid.factorTo(fitting.get()));
    BigDecimal much = size.compareTo(BigDecimal.ONE) == 0 ? quantity : quantity.multiply(size);
    if (!rate.isHours()) {
      Unit bought = rule.isEmpty() ? Unit.parse("job") : fitting.get().over(rate.unit());
      add(rate, new Line.Quantity(much, bought), Money.of(currency, rate.amount()), basis);
    } else if (rates.crews().containsKey(rate.crew())) {
      Line.Quantity hours = new Line.Quantity(much.multiply(rate.amount()), HOUR);
      add(rate, hours, rates.crews().get(rate.crew()), basis);
    } else {
      says(rate.item(), "no crew '" + rate.crew() + "' for the rate of " + rate.item());
    }
  }

  private void add(Rate rate, Line.Quantity quantity, Money price, String basis) {
    lines.add(Line.extended(rate.category(), rate.costCode(), rate.item(), quantity, price, basis));
  }

  /** What a rate comes to over its quantity: hours of a crew, else money; a plain dollar is that of the terms. */
  private Stream<Unit> wanted(Rate rate) {
    if (rate.isHours()) {
      return Stream.of(HOUR);
    }
    return Stream.concat(Stream.of(DOLLAR), money().stream());
  }

  /** The unit of the currency; many have none. */
  private Optional<Unit> money() {
    try {
      return Optional.of(Unit.parse(currency));
    } catch (IllegalArgumentException unnamed) {
      return Optional.empty();
    }
  }

  private String unitSentence(Rate rate, Unit of) {
    String like = rate.isHours() ? "hour" : "$";
    String per = of.equals(Unit.RATIO) ? "" : "/" + of;
    String crew = rate.isHours() ? "" : " without a crew";
    return "the rate of " + rate.item() + crew + " must be in " + like + per + ", but is in "
        + rate.unit();
  }
}
