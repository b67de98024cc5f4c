package squaresheet.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.formula.Formula;

/** Puts a rulebook together: reads its lines, reads its formulas, and finds the order in which they can be worked out. */
final class RulebookReader {

  private final Map<String, Rule> standard;
  private final Where table;
  private final List<Finding> findings = new ArrayList<>();

  RulebookReader(Map<String, Rule> standard, Where table) {
    this.standard = standard;
    this.table = table;
  }

  Read<Rulebook> read(List<RuleLine> lines) {
    if (lines.isEmpty() || !lines.get(0).has("name") || !lines.get(0).has("formula")) {
      return Read.nothing(new Finding(
          Complaints.NOT_READ,
          table,
          "the rulebook must have the columns name and formula and a rule or more, but has not"));
    }
    Map<String, Rule> rules = new LinkedHashMap<>(standard);
    Map<String, Where> places = new LinkedHashMap<>();
    for (RuleLine line : lines) {
      add(line, rules, places);
    }
    return assemble(rules, places);
  }

  private void add(RuleLine line, Map<String, Rule> rules, Map<String, Where> places) {
    String name = line.text("name");
    if (places.containsKey(name)) {
      findings.add(new Finding(
          Complaints.NOT_READ,
          line.at("name"),
          "name must be used once, but '" + name + "' stands above already"));
      return;
    }
    Optional<Rule> old = Optional.ofNullable(standard.get(name));
    RuleReader reader = new RuleReader(line, old);
    Optional<Rule> read = reader.read();
    findings.addAll(reader.findings());
    read.filter(rule -> isFormula(rule, line)).ifPresent(rule -> {
      rules.put(name, rule);
      places.put(name, line.at("formula"));
      old.ifPresent(before -> sayOverridden(before, rule, line));
    });
  }

  private boolean isFormula(Rule rule, RuleLine line) {
    if (!rule.isWorkedOut()) {
      return true;
    }
    Read<Formula> formula = Formula.parse(rule.formula(), line.at("formula"));
    findings.addAll(formula.findings());
    return formula.value().isPresent();
  }

  private void sayOverridden(Rule before, Rule rule, RuleLine line) {
    if (!before.formula().equals(rule.formula())) {
      findings.add(new Finding(
          Complaints.OVERRIDDEN,
          line.at("formula"),
          rule.formula(),
          before.formula(),
          "company rule " + rule.name() + " is '" + rule.formula() + "' in place of the standard '"
              + before.formula() + "'",
          ""));
    }
  }

  Read<Rulebook> assemble(Map<String, Rule> rules, Map<String, Where> places) {
    Map<String, Formula> formulas = new LinkedHashMap<>();
    rules.values().stream().filter(Rule::isWorkedOut).forEach(rule -> {
      Read<Formula> formula = Formula.parse(rule.formula(), place(places, rule.name()));
      formula.value().ifPresent(read -> formulas.put(rule.name(), read));
      if (formula.value().isEmpty()) {
        findings.addAll(formula.findings());
      }
    });
    formulas.forEach((name, formula) -> unknown(rules, name, formula, place(places, name)));
    RuleUnits units = new RuleUnits(rules);
    places.forEach((name, place) -> Optional.ofNullable(formulas.get(name))
        .ifPresent(formula -> findings.addAll(units.examine(rules.get(name), formula, place))));
    DependencyOrder order = new DependencyOrder(rules, formulas);
    order
        .circles()
        .forEach(circle -> findings.add(new Finding(
            Complaints.CIRCULAR,
            place(places, circle.get(0)),
            "rules must not ask for each other in a circle, but these do: "
                + String.join(" asks for ", circle) + " asks for " + circle.get(0))));
    return Read.of(new Rulebook(rules, formulas, order.inOrder()), findings);
  }

  private Where place(Map<String, Where> places, String name) {
    return places.getOrDefault(name, new Where.OfItem("rule " + name, "formula"));
  }

  private void unknown(Map<String, Rule> rules, String name, Formula formula, Where where) {
    for (String asked : names(formula)) {
      if (!rules.containsKey(asked)) {
        findings.add(new Finding(
            Complaints.NAME_UNKNOWN,
            where,
            asked,
            "",
            "no quantity '" + asked + "' for the rule " + name
                + Neighbours.sentence(asked, rules.keySet()),
            ""));
      }
    }
  }

  /** The names in a formula, as rules are named; spreadsheets take names in any letter case. */
  static List<String> names(Formula formula) {
    return formula.names().stream()
        .map(name -> name.name().toLowerCase(Locale.ROOT))
        .distinct()
        .toList();
  }
}
