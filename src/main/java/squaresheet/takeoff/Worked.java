package squaresheet.takeoff;

import java.util.List;
import java.util.StringJoiner;
import squaresheet.finding.Where;
import squaresheet.formula.Value;

/**
 * How a value came about.
 *
 * @param rule the rule, or the given name or setting
 * @param where the item it is a value of
 * @param value the value
 * @param inputs what went in, in the order of the formula
 * @param rounding the rounding in it, in words; empty where there is none
 */
public record Worked(Rule rule, Where where, Value value, List<Input> inputs, String rounding) {

  public Worked {
    inputs = List.copyOf(inputs);
  }

  /**
   * What went into a value.
   *
   * @param rule the name it goes by
   * @param where the item it is a value of
   * @param values one value, or a column of them
   */
  public record Input(Rule rule, Where where, List<Value> values) {

    public Input {
      values = List.copyOf(values);
    }

    /** For people: {@code gross_area = 2706.4 sq ft sloped (job: gross_area)}. */
    public String show() {
      StringJoiner shown = new StringJoiner(" + ");
      values.forEach(value -> shown.add(Shown.plain(value)));
      String number = values.size() == 1
          ? Shown.of(rule, values.get(0))
          : values.isEmpty() ? "no rows" : "the column " + shown + " " + RuleReader.written(rule);
      return rule.name() + " = " + number + " (" + where + ")";
    }
  }

  /** For people: the value, the rule, each input with its place, and the rounding, a line each. */
  public String show() {
    StringJoiner lines = new StringJoiner("\n");
    lines.add(rule.label() + ": " + Shown.of(rule, value));
    if (rule.isWorkedOut()) {
      lines.add("  " + rule.name() + " = " + rule.formula());
    }
    inputs.forEach(input -> lines.add("  " + input.show()));
    if (!rounding.isEmpty()) {
      lines.add("  " + rounding);
    }
    if (!rule.source().isEmpty()) {
      lines.add("  source: " + rule.source());
    }
    return lines.toString();
  }
}
