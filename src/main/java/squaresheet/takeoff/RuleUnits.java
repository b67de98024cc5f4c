package squaresheet.takeoff;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Formula;
import squaresheet.formula.Inference;
import squaresheet.formula.Labels;
import squaresheet.formula.Scope;
import squaresheet.formula.Value;
import squaresheet.takeoff.Rule.Holds;
import squaresheet.units.Unit;

/** Does what a rule works out come in the unit it states, and do the units in it agree? Names without a rule have no unit. */
final class RuleUnits {

  private static final Scope NO_CELLS = cell -> new Value.Blank();

  private final Labels labels;

  RuleUnits(Map<String, Rule> rules) {
    labels = new Labels() {
      @Override
      public Optional<Unit> unit(String name) {
        return Optional.ofNullable(rules.get(name.toLowerCase(Locale.ROOT)))
            .flatMap(RuleUnits::unit);
      }
    };
  }

  private static Optional<Unit> unit(Rule rule) {
    return rule.holds() == Holds.NUMBER ? Optional.of(rule.unit()) : Optional.empty();
  }

  List<Finding> examine(Rule rule, Formula formula, Where where) {
    return Inference.of(formula, NO_CELLS, labels, unit(rule)).clashes().stream()
        .map(clash -> new Finding(
            Complaints.UNIT_OFF,
            where,
            clash.part(),
            "",
            "the rule " + rule.name() + " " + says(clash),
            ""))
        .toList();
  }

  private static String says(Inference.Clash clash) {
    boolean result = clash.kind() == Inference.Kind.RESULT;
    return result ? clash.sentence() : "has " + clash.part() + " in it: " + clash.sentence();
  }
}
