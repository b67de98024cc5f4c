package squaresheet.verify;

import java.util.List;
import java.util.OptionalDouble;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/**
 * A cell of a workbook of foreign layout whose value follows from other bound cells.
 *
 * @param model the model
 * @param at the cell
 * @param item what it is bound to
 * @param kind of what it is made
 * @param should the values it may have, in its own unit, the likeliest first: with or without openings, say
 * @param tolerance how far off it may be, as a share: what rounded factors of another table can do
 * @param how what it is made of, in words
 */
record BoundValue(
    BookModel model,
    Address at,
    Where.OfItem item,
    Kind kind,
    List<Double> should,
    double tolerance,
    String how) {

  /** What a value is made of. */
  enum Kind {
    /** Dimensions and pitch of a plane, or the values that follow from them. */
    PLANE,
    /** A price and a quantity. */
    LINE,
    /** Values that are added up, or taken on. */
    TOTAL
  }

  BoundValue {
    should = List.copyOf(should);
  }

  /**
   * What the cell makes when everything before it is right; nothing where that cannot be worked out. A line is held against
   * its own quantity and price as they stand, so it is taken as it stands too.
   */
  OptionalDouble own() {
    if (kind == Kind.LINE) {
      return model.book().number(at);
    }
    Value value = model
        .book()
        .formula(at)
        .map(formula -> model.asModelled().evaluate(formula, at))
        .orElseGet(() -> model.book().value(at));
    return Shown.number(value);
  }

  /**
   * Whether the value could be held against the model. A formula for a total may leave out rows on purpose, by a condition or
   * because they are hidden; where it makes something else, other checks look into it and here it is not checked.
   */
  boolean isHeld() {
    boolean own = kind == Kind.TOTAL && model.book().formula(at).isPresent();
    return own().isPresent() && (!own || isRight());
  }

  boolean isRight() {
    return own().stream().anyMatch(own -> should.stream().anyMatch(it -> fits(own, it)));
  }

  private boolean fits(double own, double wanted) {
    return Math.abs(own - wanted) <= tolerance * Math.abs(wanted) || Rounded.is(own, wanted);
  }

  /** {@code plane Front: sloped area}. */
  String called() {
    return item.subject() + ": " + item.property().replace('_', ' ');
  }

  Finding says(CheckInfo info) {
    double wanted = should.get(0);
    return Says.about(
        info,
        model.book(),
        at,
        new Value.Number(wanted),
        called() + " is " + Shown.number(own().orElse(0)) + ", but " + how + " make "
            + Shown.number(wanted));
  }
}
