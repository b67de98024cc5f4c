package squaresheet.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.formula.Value;
import squaresheet.takeoff.Rule.Kind;

/** Says which limits of the rulebook are not kept, and which orders could not be worked out. */
final class Limits {

  private final Takeoff takeoff;
  private final List<Finding> findings = new ArrayList<>();

  Limits(Takeoff takeoff) {
    this.takeoff = takeoff;
  }

  List<Finding> findings() {
    for (Rule rule : takeoff.rulebook().rules()) {
      List<Value> column = takeoff.values(rule.name());
      for (int row = 0; row < column.size(); row++) {
        look(rule, column.get(row), row);
      }
    }
    return findings;
  }

  private void look(Rule rule, Value value, int row) {
    if (rule.kind() == Kind.LIMIT && value instanceof Value.Truth truth && !truth.value()) {
      findings.add(
          new Finding(card(rule), takeoff.worked(rule.name(), row).where(), sentence(rule, row)));
    }
    if (!rule.orders().isEmpty() && !(value instanceof Value.Number)) {
      findings.add(new Finding(
          Complaints.NOT_WORKED_OUT,
          takeoff.worked(rule.name(), row).where(),
          rule.name() + " (" + rule.label() + ") could not be worked out and is not ordered: "
              + new Culprit(takeoff).of(rule.name(), row)));
    }
  }

  private static CheckInfo card(Rule rule) {
    return switch (rule.choices().isEmpty() ? "error" : rule.choices().get(0)) {
      case "warning" -> Complaints.LIMIT_WARNING;
      case "note" -> Complaints.LIMIT_NOTE;
      default -> Complaints.LIMIT_ERROR;
    };
  }

  private String sentence(Rule rule, int row) {
    StringJoiner with = new StringJoiner(", ");
    takeoff.worked(rule.name(), row).inputs().stream()
        .filter(input -> input.values().size() == 1)
        .forEach(input -> with.add(
            input.rule().name() + " is " + Shown.of(input.rule(), input.values().get(0))));
    return rule.label() + ": " + with + " (" + rule.source() + ")";
  }
}
