package squaresheet.takeoff;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Formula;
import squaresheet.formula.Value;
import squaresheet.takeoff.Rule.Kind;
import squaresheet.takeoff.Rule.Per;

/** Every value of a takeoff, by name and row. */
final class Values {

  private static final Value ABSENT = new Value.Fault("#N/A");
  private static final Value NO_SUCH_NAME = new Value.Fault("#NAME?");

  private final Rulebook rulebook;
  private final Names names;
  private final Map<String, List<Value>> columns = new HashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  Values(Rulebook rulebook, Names names) {
    this.rulebook = rulebook;
    this.names = names;
    rulebook.rules().stream().filter(rule -> !rule.isWorkedOut()).forEach(this::take);
    rulebook.inOrder().forEach(this::workOut);
  }

  List<Finding> findings() {
    return findings;
  }

  private void take(Rule rule) {
    List<Value> column = new ArrayList<>();
    for (Map<String, Value> row : names.rows(rule.per())) {
      Optional<Value> typed = Optional.ofNullable(row.get(rule.name()));
      column.add(rule.kind() == Kind.SETTING ? setting(rule, typed) : typed.orElse(ABSENT));
    }
    columns.put(rule.name(), column);
  }

  private Value setting(Rule rule, Optional<Value> typed) {
    Optional<Finding> off = typed.flatMap(value -> Settings.finding(rule, value, where(rule, 0)));
    off.ifPresent(findings::add);
    return typed
        .filter(value -> off.isEmpty())
        .map(value -> Settings.exactly(rule, value))
        .orElseGet(rule::usual);
  }

  private void workOut(Rule rule) {
    Formula formula = rulebook.formula(rule.name()).orElseThrow();
    List<Value> column = new ArrayList<>();
    for (int row = 0; row < names.rows(rule.per()).size(); row++) {
      column.add(formula.evaluate(new RowScope(this, rule.per(), row)));
    }
    columns.put(rule.name(), column);
  }

  Optional<Rule> rule(String name) {
    return rulebook.rule(name.toLowerCase(Locale.ROOT));
  }

  Value job(String name) {
    return rule(name)
        .map(rule -> rule.per() == Per.JOB ? at(rule, 0) : new Value.Fault("#VALUE!"))
        .orElse(NO_SUCH_NAME);
  }

  /** The value of a rule in a row; absent while it has not been worked out, as in a circle. */
  Value at(Rule rule, int row) {
    List<Value> column = columns.get(rule.name());
    return column == null ? ABSENT : column.get(row);
  }

  List<Value> column(String name) {
    return rule(name)
        .map(rule -> Collections.unmodifiableList(columns.getOrDefault(rule.name(), List.of())))
        .orElse(List.of());
  }

  Where where(Rule rule, int row) {
    return new Where.OfItem(subject(rule.per(), row), rule.name());
  }

  private String subject(Per per, int row) {
    return switch (per) {
      case JOB -> "job";
      case PLANE -> "plane " + text(Per.PLANE, "plane_name", row);
      case EDGE -> "edge " + text(Per.EDGE, "edge_name", row);
      case CORNER -> "corner " + (row + 1);
    };
  }

  private String text(Per per, String name, int row) {
    return names.rows(per).get(row).get(name) instanceof Value.Text text
        ? text.value()
        : String.valueOf(row + 1);
  }

  Worked worked(String name, int row) {
    Rule rule = rule(name)
        .orElseThrow(() ->
            new IllegalArgumentException("no quantity '" + name + "'" + rulebook.nearest(name)));
    List<Worked.Input> inputs = rulebook.asks(rule.name()).stream()
        .flatMap(asked -> rule(asked).stream())
        .map(asked -> input(rule, asked, row))
        .toList();
    String rounding = rule.formula().contains("(1-1E-9)")
        ? "rounded up to a whole number, once; a need within 1e-9 of a whole number is that number"
        : "";
    return new Worked(rule, where(rule, row), at(rule, row), inputs, rounding);
  }

  private Worked.Input input(Rule asking, Rule asked, int row) {
    if (asked.per() == Per.JOB) {
      return new Worked.Input(asked, where(asked, 0), List.of(at(asked, 0)));
    }
    return asked.per() == asking.per()
        ? new Worked.Input(asked, where(asked, row), List.of(at(asked, row)))
        : new Worked.Input(
            asked,
            new Where.OfItem("all " + asked.per() + "s", asked.name()),
            column(asked.name()));
  }
}
