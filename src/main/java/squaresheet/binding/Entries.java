package squaresheet.binding;

import squaresheet.formula.Value;
import squaresheet.sheet.Content;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Role;
import squaresheet.takeoff.Rule;
import squaresheet.units.Unit;

/** Cells of new sheets. */
final class Entries {

  private Entries() {}

  static Entry input(String text) {
    return (text.isEmpty() ? Entry.blank() : Entry.text(text)).as(Role.INPUT);
  }

  static Entry input(double number, String format) {
    return Entry.number(number).as(Role.INPUT).format(format);
  }

  static Entry blankInput() {
    return Entry.blank().as(Role.INPUT);
  }

  static Entry label(String text) {
    return Entry.text(text).as(Role.LABEL);
  }

  static Entry note(String text) {
    return Entry.text(text).as(Role.NOTE);
  }

  static Entry unit(String text) {
    return Entry.text(text).as(Role.UNIT);
  }

  static Entry computed(String formula, String format) {
    return Entry.formula(formula, new Content.Blank()).format(format);
  }

  /** A typed value of whatever sort. */
  static Entry input(Value value, String format) {
    if (value instanceof Value.Number number) {
      return input(number.value(), format);
    }
    if (value instanceof Value.Text text) {
      return input(text.value());
    }
    return value instanceof Value.Truth truth
        ? Entry.of(new Content.Truth(truth.value())).as(Role.INPUT)
        : blankInput();
  }

  /** How a rule's value is shown. */
  static String format(Rule rule) {
    if (rule.holds() != Rule.Holds.NUMBER) {
      return "General";
    }
    return switch (rule.unit().kind()) {
      case LENGTH -> "#,##0.00";
      case AREA, PLAN_AREA, SLOPED_AREA, WEIGHT, HOURS -> "#,##0.0";
      case SQUARES, RATE, OTHER -> "#,##0.00##";
      case RATIO -> ratio(rule.name());
      case MONEY -> "#,##0.00";
      case PITCH, ANGLE -> "General";
      case PIECES, VOLUME -> "#,##0.0";
      case BUNDLES, ROLLS, BOXES, SHEETS, COUNT -> isInParts(rule) ? "General" : "#,##0";
    };
  }

  /** Whether a setting that is counted need not be whole, such as stories. */
  private static boolean isInParts(Rule rule) {
    return rule.range().filter(range -> !range.isWhole()).isPresent();
  }

  private static String ratio(String name) {
    if (name.matches(".*(waste|share|rate)")) {
      return "0.0%";
    }
    return name.endsWith("factor") ? "0.0000" : "0.####";
  }

  /** A label with its unit behind a comma. */
  static String heading(String label, Rule rule) {
    boolean plain = rule.holds() != Rule.Holds.NUMBER || rule.unit().equals(Unit.RATIO);
    return plain ? label : label + ", " + unit(rule.unit());
  }

  /** The unit as headings show it. */
  static String unit(Unit unit) {
    return unit.toString().replace(" sloped", "").replace(" plan", "");
  }
}
