package squaresheet.takeoff;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import squaresheet.formula.Value;
import squaresheet.product.Role;
import squaresheet.tape.NumberReader;
import squaresheet.units.Unit;

/**
 * A named value of the takeoff: given, typed as a setting, or worked out by a formula that an estimator may edit.
 *
 * @param name two or more lower-case words joined by underscores, never shaped like a cell
 * @param per whether there is one value for the job, or one for each plane, edge or corner
 * @param kind where the value comes from
 * @param formula an ordinary spreadsheet formula over names, without the equals sign; the default of a setting; empty for
 *     what is given
 * @param unit the unit of the value; a plain ratio where it is a text or a truth
 * @param holds whether it is a number, a text or a truth
 * @param choices what a setting may be, where it may not be anything; the weight of a limit
 * @param orders the role of the product that it orders in whole packs, or empty
 * @param label what people call it
 * @param source a key of the published sources, or {@code common practice}
 * @param note anything else, or empty
 */
public record Rule(
    String name,
    Per per,
    Kind kind,
    String formula,
    Unit unit,
    Holds holds,
    List<String> choices,
    String orders,
    String label,
    String source,
    String note) {

  private static final Pattern NAME = Pattern.compile("[a-z]+(_[a-z0-9]+)+");

  public Rule {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException(
          "a rule's name must be two or more lower-case words joined by underscores, like shingle_bundles, but is '"
              + name + "'");
    }
    if (!orders.isEmpty() && Role.parse(orders).isEmpty()) {
      throw new IllegalArgumentException(
          "orders must name the role of a product, but names '" + orders + "'");
    }
    if (formula.isEmpty() != (kind == Kind.GIVEN)) {
      throw new IllegalArgumentException(
          kind == Kind.GIVEN
              ? name + " is given, so it must have no formula, but has '" + formula + "'"
              : name + " must have a formula, but has none");
    }
    if (per == Per.CORNER && kind != Kind.GIVEN) {
      throw new IllegalArgumentException(
          name + " is worked out, so it must be per job, plane or edge, but is per corner");
    }
    choices = List.copyOf(choices);
  }

  /** How many values a rule has. Text form: {@code plane}. */
  public enum Per {
    /** One for the job. */
    JOB,
    /** One for every plane. */
    PLANE,
    /** One for every straight edge, shared edges once. */
    EDGE,
    /** One for every corner of a plane of free shape, with the side to the next; only for what the roof gives. */
    CORNER;

    static Optional<Per> parse(String text) {
      return Arrays.stream(values()).filter(per -> per.toString().equals(text)).findFirst();
    }

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Where a value comes from. Text form: {@code setting}. */
  public enum Kind {
    /** The roof, the products or the course layout. */
    GIVEN,
    /** The estimator; the formula is the default. */
    SETTING,
    /** Its formula. */
    RULE,
    /** Its formula, which must be TRUE; otherwise the label is said as a finding. */
    LIMIT;

    static Optional<Kind> parse(String text) {
      return Arrays.stream(values())
          .filter(kind -> kind.toString().equals(text))
          .findFirst();
    }

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** What sort of value a rule has. */
  public enum Holds {
    /** A number in the rule's unit. */
    NUMBER,
    /** A text. */
    TEXT,
    /** TRUE or FALSE. */
    TRUTH
  }

  /** Whether its value is worked out by its formula. */
  public boolean isWorkedOut() {
    return kind == Kind.RULE || kind == Kind.LIMIT;
  }

  /** The role of the product that it orders, if it orders one. */
  public Optional<Role> role() {
    return Role.parse(orders);
  }

  /** What a number typed for it can be, where it is a setting that may not be any number. */
  public Optional<SettingRange> range() {
    return kind == Kind.SETTING && holds == Holds.NUMBER && choices.isEmpty()
        ? SettingRange.of(name)
        : Optional.empty();
  }

  /** What a setting is unless something else is typed. */
  public Value usual() {
    return switch (holds) {
      case NUMBER ->
        NumberReader.POINT
            .share(formula)
            .map(number -> Value.of(number.doubleValue()))
            .orElseThrow(() -> new IllegalStateException(
                "the default of " + name + " must be a number, but reads '" + formula + "'"));
      case TEXT -> new Value.Text(formula);
      case TRUTH -> new Value.Truth(Boolean.parseBoolean(formula));
    };
  }

  /** The same rule with another formula, and where that comes from. */
  public Rule withFormula(String other, String from) {
    return new Rule(name, per, kind, other, unit, holds, choices, orders, label, from, note);
  }
}
