package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import squaresheet.formula.Value;
import squaresheet.sheet.Block;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.takeoff.Rule;

/** A setting on a sheet: its label, the cell to type in with its defined name, its unit, where its usual value comes from. */
final class SettingRow {

  private final JobParts parts;
  private final Draft draft;

  SettingRow(JobParts parts, Draft draft) {
    this.parts = parts;
    this.draft = draft;
  }

  /** Writes a setting, its comment and its name in these columns, and goes down a row. */
  void write(Downward down, Rule rule, int comment, int name) {
    Ref at = new Ref(down.row(), 1);
    boolean bare = rule.holds() != Rule.Holds.NUMBER;
    down.put(0, Entries.label(rule.label()));
    down.put(1, Entries.input(value(rule), Entries.format(rule)));
    down.put(2, Entries.unit(bare ? "" : Entries.unit(rule.unit())));
    down.put(comment, Entries.note(comment(rule)));
    down.put(name, Entries.unit(rule.name()));
    draft.name(rule.name(), down.there(1));
    if (!rule.choices().isEmpty()) {
      down.sheet()
          .validate(Sheet.Validation.choice(
              new Block(at, at), rule.choices(), "one of: " + String.join(", ", rule.choices())));
    }
    down.skip(1);
  }

  private static String comment(Rule rule) {
    List<String> parts = new ArrayList<>(List.of(rule.source(), rule.note()));
    parts.removeIf(String::isEmpty);
    return String.join("; ", parts).replaceAll(";? ?for the course layout", "");
  }

  /** What was typed for a setting, else its default. */
  private Value value(Rule rule) {
    Value given = parts.given().get(rule.name());
    return given == null ? usual(rule) : given;
  }

  private static Value usual(Rule rule) {
    return switch (rule.holds()) {
      case NUMBER -> Value.of(Double.parseDouble(rule.formula()));
      case TEXT -> new Value.Text(rule.formula());
      case TRUTH -> new Value.Truth(Boolean.parseBoolean(rule.formula()));
    };
  }
}
