package squaresheet.takeoff;

import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Value;

/** What a setting is unless typed, and whether what was typed is one. */
final class Settings {

  private Settings() {}

  /** The default of a setting. */
  static Value usual(Rule rule) {
    return switch (rule.holds()) {
      case NUMBER -> Value.of(Double.parseDouble(rule.formula()));
      case TEXT -> new Value.Text(rule.formula());
      case TRUTH -> new Value.Truth(Boolean.parseBoolean(rule.formula()));
    };
  }

  /** What is wrong with a setting, if anything is. */
  static Optional<Finding> finding(Rule rule, Value value, Where where) {
    String must = must(rule, value);
    return must.isEmpty()
        ? Optional.empty()
        : Optional.of(new Finding(
            Complaints.SETTING_OFF,
            where,
            Shown.plain(value),
            "",
            rule.name() + " (" + rule.label() + ") must be " + must + ", but is "
                + Shown.plain(value),
            ""));
  }

  private static String must(Rule rule, Value value) {
    boolean fits =
        switch (rule.holds()) {
          case NUMBER -> value instanceof Value.Number;
          case TEXT -> value instanceof Value.Text;
          case TRUTH -> value instanceof Value.Truth;
        };
    if (!fits) {
      return rule.choices().isEmpty() ? kindWord(rule) : String.join(" or ", rule.choices());
    }
    boolean allowed = rule.choices().isEmpty()
        || rule.choices().stream().anyMatch(choice -> choice.equalsIgnoreCase(bare(value)));
    return allowed ? "" : String.join(" or ", rule.choices());
  }

  private static String bare(Value value) {
    return value instanceof Value.Text text ? text.value() : Shown.plain(value);
  }

  private static String kindWord(Rule rule) {
    return switch (rule.holds()) {
      case NUMBER -> "a number in " + rule.unit();
      case TEXT -> "a text";
      case TRUTH -> "TRUE or FALSE";
    };
  }
}
