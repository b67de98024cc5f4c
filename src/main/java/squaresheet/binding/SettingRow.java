package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.formula.Value;
import squaresheet.sheet.Block;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.SettingRange;

/** A setting on a sheet: its label, the cell to type in with its defined name, its unit, where its usual value comes from. */
final class SettingRow {

  private final JobParts parts;
  private final Draft draft;

  SettingRow(JobParts parts, Draft draft) {
    this.parts = parts;
    this.draft = draft;
  }

  /**
   * Writes a setting, its comment and its name, and goes down a row. On a metric job a length is typed in millimetres or
   * metres, and the cell that formulas read stands in column {@code beside}.
   */
  void write(Downward down, Rule rule, Columns columns) {
    down.put(0, Entries.label(rule.label()));
    Optional<MetricLength> metric = parts.isMetric() ? MetricLength.of(rule) : Optional.empty();
    metric.ifPresentOrElse(
        unit -> length(down, rule, unit, columns.beside()), () -> typed(down, rule));
    rule.range()
        .map(range -> metric.map(unit -> unit.typed(range)).orElse(range))
        .ifPresent(range -> down.sheet().validate(validation(range, new Ref(down.row(), 1))));
    down.put(columns.comment(), Entries.note(comment(rule)));
    down.put(columns.name(), Entries.unit(rule.name()));
    down.skip(1);
  }

  /**
   * Which columns hold what.
   *
   * @param beside what formulas read of a length typed in metric units
   * @param comment where the usual value comes from
   * @param name the defined name
   */
  record Columns(int beside, int comment, int name) {}

  /** A length typed in metric units, with the cell that formulas read. */
  private void length(Downward down, Rule rule, MetricLength unit, int beside) {
    down.put(1, unit.typed(number(rule)));
    down.put(2, Entries.unit(unit.symbol()));
    down.put(beside, unit.beside(down.here(1)));
    draft.name(rule.name() + LengthColumns.TYPED, down.there(1));
    draft.name(rule.name(), down.there(beside));
  }

  private void typed(Downward down, Rule rule) {
    Ref at = new Ref(down.row(), 1);
    boolean bare = rule.holds() != Rule.Holds.NUMBER;
    down.put(1, Entries.input(value(rule), Entries.format(rule)));
    down.put(2, Entries.unit(bare ? "" : Entries.unit(rule.unit())));
    draft.name(rule.name(), down.there(1));
    if (!rule.choices().isEmpty()) {
      down.sheet()
          .validate(Sheet.Validation.choice(
              new Block(at, at), rule.choices(), "one of: " + String.join(", ", rule.choices())));
    }
  }

  /** Lets nothing else be typed than what the setting can be. */
  private static Sheet.Validation validation(SettingRange range, Ref at) {
    Block block = new Block(at, at);
    if (range.isZeroToo()) {
      String within = at + ">=" + range.least() + "," + at + "<=" + range.most();
      return Sheet.Validation.custom(block, "OR(" + at + "=0,AND(" + within + "))", range.mustBe());
    }
    return range.isWhole()
        ? Sheet.Validation.whole(block, range.least(), range.most(), range.mustBe())
        : Sheet.Validation.number(block, range.least(), range.most(), range.mustBe());
  }

  private double number(Rule rule) {
    return ((Value.Number) value(rule)).value();
  }

  private static String comment(Rule rule) {
    List<String> parts = new ArrayList<>(List.of(rule.source(), rule.note()));
    parts.removeIf(String::isEmpty);
    return String.join("; ", parts).replaceAll(";? ?for the course layout", "");
  }

  /** What was typed for a setting, else its default. */
  private Value value(Rule rule) {
    Value given = parts.given().get(rule.name());
    return given == null ? rule.usual() : given;
  }
}
