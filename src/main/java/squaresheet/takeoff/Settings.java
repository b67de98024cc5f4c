package squaresheet.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.formula.Value;

/**
 * Judges what was typed for settings: takeoff, layout, workbook and papers all read what is left. What is no choice, no
 * number, or out of its range is said, and counts as not typed.
 */
public final class Settings {

  private final Rulebook rulebook;
  private final Map<String, Value> kept = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  private Settings(Rulebook rulebook) {
    this.rulebook = rulebook;
  }

  /**
   * The settings that can be meant, of those typed for a job, by name.
   *
   * @param typed what was typed, by the name of the setting, in its unit
   */
  public static Read<Map<String, Value>> judged(Rulebook rulebook, Map<String, Value> typed) {
    Settings settings = new Settings(rulebook);
    typed.forEach(settings::take);
    settings.pairs();
    return Read.of(settings.kept, settings.findings);
  }

  private void take(String name, Value value) {
    Optional<Rule> rule = rulebook.rule(name).filter(it -> it.kind() == Rule.Kind.SETTING);
    Optional<Finding> finding =
        rule.isEmpty() ? Optional.of(unknown(name)) : finding(rule.get(), value, where(name));
    finding.ifPresentOrElse(
        findings::add, () -> kept.put(name, exactly(rule.orElseThrow(), value)));
  }

  private static Where where(String name) {
    return new Where.OfItem("job", name);
  }

  private Finding unknown(String name) {
    List<String> known = rulebook.settings().stream().map(Rule::name).toList();
    return new Finding(
        Complaints.SETTING_UNKNOWN,
        where(name),
        name,
        "",
        "no setting '" + name + "'" + Neighbours.sentence(name, known),
        "");
  }

  /** A value that can be meant, as everything reads it. */
  static Value exactly(Rule rule, Value value) {
    return value instanceof Value.Number number
        ? rule.range().map(range -> Value.of(range.exactly(number.value()))).orElse(value)
        : value;
  }

  /** A setting that is over the one that it must not be over counts as not typed, and so does the other. */
  private void pairs() {
    for (Rule rule : rulebook.settings()) {
      String over = rule.range().map(SettingRange::notOver).orElse("");
      Optional<Double> one = number(rule.name());
      Optional<Double> other = number(over);
      if (one.isPresent() && other.isPresent() && one.get() > other.get()) {
        findings.add(off(
            rule,
            "no more than " + over + ", which is " + Shown.plain(Value.of(other.get())),
            Value.of(one.get()),
            where(kept.containsKey(rule.name()) ? rule.name() : over)));
        kept.remove(rule.name());
        kept.remove(over);
      }
    }
  }

  private Optional<Double> number(String setting) {
    return Optional.ofNullable(kept.get(setting))
        .or(() -> rulebook.rule(setting).map(Rule::usual))
        .flatMap(it ->
            it instanceof Value.Number number ? Optional.of(number.value()) : Optional.empty());
  }

  /** What is wrong with what was typed for a setting, if anything is. */
  public static Optional<Finding> finding(Rule rule, Value value, Where where) {
    String must = must(rule, value);
    return must.isEmpty() ? Optional.empty() : Optional.of(off(rule, must, value, where));
  }

  /** Says that a setting must be something else than it is. */
  public static Finding off(Rule rule, String must, Value value, Where where) {
    String found = Shown.plain(value);
    Optional<Value> percent = percent(rule, value);
    return new Finding(
        Complaints.SETTING_OFF,
        where,
        found,
        percent.map(Shown::plain).orElse(""),
        rule.name() + " (" + rule.label() + ") must be " + must + ", but is " + found
            + (percent.isEmpty() ? "" : "; " + found + " percent is written " + found + "%"),
        "");
  }

  /** People write ten percent as 10. */
  private static Optional<Value> percent(Rule rule, Value value) {
    return rule.range()
        .filter(range -> range.unit().isEmpty() && !range.isWhole())
        .flatMap(range -> value instanceof Value.Number number
                && number.value() > 1
                && range.holds(number.value() / 100)
            ? Optional.of(Value.of(number.value() / 100))
            : Optional.empty());
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
    return allowed ? range(rule, value) : String.join(" or ", rule.choices());
  }

  private static String range(Rule rule, Value value) {
    return value instanceof Value.Number number
        ? rule.range()
            .filter(range -> !range.holds(number.value()))
            .map(SettingRange::mustBe)
            .orElse("")
        : "";
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
