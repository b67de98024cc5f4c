package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import squaresheet.binding.BoundJob;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Formula;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.takeoff.Rule;

/**
 * A cell whose value the model knows.
 *
 * @param model the model
 * @param at the cell
 * @param item what it is
 * @param rule the rule or given value it holds
 * @param row its row in the takeoff, -1 for the sum of all rows
 * @param bound the formula as it stands, where it is a rule's
 */
record Modelled(
    Model model,
    Address at,
    Where.OfItem item,
    Rule rule,
    int row,
    Optional<BoundJob.BoundRule> bound) {

  /** A length is kept to 1/320 mm, which is a hundred-thousandth of a foot; areas of two such differ by twice that. */
  static final double KEPT = 2e-5;

  Book book() {
    return model.book();
  }

  Value there() {
    return book().value(at);
  }

  /** What the model makes of the typed cells. */
  Value should() {
    List<Value> all = model.takeoff().values(rule.name());
    if (row >= 0) {
      return row < all.size() ? all.get(row) : new Value.NotChecked("no such row");
    }
    boolean numbers = all.stream().allMatch(value -> value instanceof Value.Number);
    return numbers && rule.holds() == Rule.Holds.NUMBER
        ? new Value.Number(
            all.stream().mapToDouble(value -> ((Value.Number) value).value()).sum())
        : new Value.NotChecked("not a sum");
  }

  boolean isFormula() {
    return book().cell(at).isFormula();
  }

  /** Whether a clean workbook has a formula here: rules and sums of them, not what is typed or chosen. */
  boolean isWorkedOutInBook() {
    return rule.isWorkedOut() || row < 0;
  }

  /** Whether it is the waste found by laying out every course, which a spreadsheet program cannot work out anew. */
  boolean isSimulatedWaste() {
    return rule.name().equals("simulated_waste");
  }

  boolean isRight() {
    return fits(there());
  }

  /** Whether a value is the model's, as far as lengths kept to 1/320 mm go. */
  boolean fits(Value value) {
    if (should() instanceof Value.Number one && value instanceof Value.Number other) {
      double size = Math.max(Math.abs(one.value()), Math.abs(other.value()));
      return Math.abs(one.value() - other.value()) <= KEPT * Math.max(1, size);
    }
    boolean nothing =
        value instanceof Value.Blank && should() instanceof Value.Number zero && zero.value() == 0;
    return nothing || Shown.same(should(), value);
  }

  /** What the cell makes when everything the model knows before it is right. */
  Value own() {
    return book()
        .formula(at)
        .map(formula -> model.asModelled().evaluate(formula, at))
        .orElseGet(this::there);
  }

  /** Whether the cell is wrong by itself, not because of a cell before it. */
  boolean isWrongItself() {
    return own().isChecked() && !fits(own());
  }

  /** Whether the formula was edited. */
  boolean isEdited() {
    return bound.filter(it -> it.formula().isPresent() && !it.isAsInRulebook()).isPresent();
  }

  /** The slip that makes exactly this value; empty where none of those known does. */
  Optional<String> slip() {
    return new Slips(this).named();
  }

  /** The rulebook's formula, if the value is worked out. */
  Optional<Formula> ruled() {
    return model.takeoff().rulebook().formula(rule.name());
  }

  /** What the item is called in sentences: {@code Squares of plane A}. */
  String called() {
    String label = rule.label().isEmpty() ? rule.name() : rule.label();
    return item.subject().equals("job") ? label : label + " of " + item.subject();
  }

  Finding says(CheckInfo info, String says) {
    return Says.about(info, book(), at, should(), says);
  }
}
