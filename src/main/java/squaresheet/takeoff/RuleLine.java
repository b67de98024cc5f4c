package squaresheet.takeoff;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import squaresheet.finding.Where;

/**
 * A rule as a line of a table, as written: what stands in each column, and where.
 *
 * @param texts what stands there, by column; see {@link #columns()}
 * @param place where a column of this line is
 */
public record RuleLine(Map<String, String> texts, Function<String, Where> place) {

  private static final List<String> COLUMNS = List.of(
      "name", "per", "kind", "formula", "unit", "choices", "orders", "label", "source", "note");

  public RuleLine {
    texts = Map.copyOf(texts);
  }

  /** The columns of a rulebook's table, in order. */
  public static List<String> columns() {
    return COLUMNS;
  }

  /** What stands for a rule in the columns. */
  public static List<String> texts(Rule rule) {
    return List.of(
        rule.name(),
        rule.per().toString(),
        rule.kind().toString(),
        rule.formula(),
        RuleReader.written(rule),
        String.join("|", rule.choices()),
        rule.orders(),
        rule.label(),
        rule.source(),
        rule.note());
  }

  boolean has(String column) {
    return texts.containsKey(column);
  }

  String text(String column) {
    return texts.getOrDefault(column, "").strip();
  }

  Where at(String column) {
    return place.apply(column);
  }
}
