package squaresheet.verify;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.RoofLayout;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Fix;
import squaresheet.formula.Value;
import squaresheet.product.Role;
import squaresheet.sheet.Address;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.units.Unit;

/**
 * A waste rate that shingles are ordered by, beside the waste that laying out every course of the same planes makes.
 *
 * @param model the model
 * @param at the cell in which the rate is typed, or else worked out
 * @param covers what it is for: {@code the roof}, {@code plane A}
 * @param rate the rate
 * @param simulated the waste of the layout
 */
record Allowance(Model model, Address at, String covers, double rate, double simulated) {

  /** Every rate that the order of shingles asks for, of the job or of single planes; none without a layout. */
  static Stream<Allowance> of(Model model) {
    return model.result().layout().stream()
        .flatMap(layout -> rates(model).stream().flatMap(rule -> of(model, layout, rule)));
  }

  private static Stream<Allowance> of(Model model, RoofLayout layout, Rule rule) {
    if (rule.per() == Rule.Per.JOB) {
      return of(
          model, typed(model, rule), "the roof", 0, layout.simulatedWaste().toDouble());
    }
    return IntStream.range(0, layout.plans().size()).boxed().flatMap(row -> {
      CoursePlan plan = layout.plans().get(row);
      return of(model, rule, "plane " + plan.plane().id(), row, plan.waste().toDouble());
    });
  }

  private static Stream<Allowance> of(
      Model model, Rule rule, String covers, int row, double simulated) {
    Optional<Address> cell =
        model.job().cells().cell(rule.per() == Rule.Per.JOB ? "job" : covers, rule.name());
    Optional<Double> rate = model.takeoff().number(rule.name(), row);
    return cell.isPresent() && rate.isPresent()
        ? Stream.of(new Allowance(model, cell.get(), covers, rate.get(), simulated))
        : Stream.empty();
  }

  /** The rates nearest to the order of shingles, on every way to it. */
  private static Set<Rule> rates(Model model) {
    Set<Rule> rates = new LinkedHashSet<>();
    Rulebook rules = model.takeoff().rulebook();
    rules.rules().stream()
        .filter(Allowance::ordersShingles)
        .forEach(rule -> collect(rules, rule, new LinkedHashSet<>(), rates));
    return rates;
  }

  private static boolean ordersShingles(Rule rule) {
    return rule.role().filter(Role.SHINGLE::equals).isPresent();
  }

  private static void collect(Rulebook rules, Rule rule, Set<Rule> seen, Set<Rule> rates) {
    for (String asked : rules.asks(rule.name())) {
      Rule next = rules.rule(asked).orElseThrow();
      if (isWaste(next)) {
        rates.add(next);
      } else if (seen.add(next)) {
        collect(rules, next, seen, rates);
      }
    }
  }

  private static boolean isWaste(Rule rule) {
    return rule.holds() == Rule.Holds.NUMBER
        && rule.unit().equals(Unit.RATIO)
        && List.of(rule.name().split("_")).contains("waste");
  }

  /** The setting that a rate hands on as it stands, else the rate itself. */
  private static Rule typed(Model model, Rule rate) {
    Rulebook rules = model.takeoff().rulebook();
    Value value = model.takeoff().value(rate.name());
    return rules.asks(rate.name()).stream()
        .flatMap(asked -> rules.rule(asked).stream())
        .filter(rule -> rule.kind() == Rule.Kind.SETTING && isWaste(rule))
        .filter(rule -> model.takeoff().value(rule.name()).equals(value))
        .findFirst()
        .orElse(rate);
  }

  /** What the rulebook keeps over the simulated waste for spoilt pieces and repairs. */
  double spare() {
    return model.takeoff().number("waste_spare").orElse(0.0);
  }

  /** How many packs of shingles more the order would be at another rate; negative where it would be less. */
  long packsAt(double other) {
    Reckoning then = model.book().reckoning().putting(Map.of(at, new Value.Number(other)));
    return model.cells().values().stream()
        .filter(cell -> ordersShingles(cell.rule()))
        .mapToLong(cell -> Math.round(number(then.value(cell.at())) - number(cell.there())))
        .sum();
  }

  private static double number(Value value) {
    return Shown.number(value).orElse(0);
  }

  /** The finding, worth what another rate would order and charge. */
  Finding says(CheckInfo info, String expected, double other, String says) {
    String worth =
        new Worth(model.book(), Optional.of(model)).difference(Map.of(at, new Value.Number(other)));
    return Says.about(info, model.book(), at, expected, says)
        .with(Fix.number(at, other))
        .worth(worth);
  }
}
