package squaresheet.formula;

import java.util.List;
import java.util.Optional;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;

/** A cell with a formula while its workbook is worked out. */
final class FormulaCell {

  private static final Value NOT_YET = new Value.NotChecked("not worked out yet");

  private final Address at;
  private final Formula formula;
  private final Optional<Block> array;
  private List<Reading> reads = List.of();
  private final boolean subtotal;
  private Value value = NOT_YET;
  private Value whole = NOT_YET;

  /**
   * Cells that a formula needs.
   *
   * @param tab their sheet
   * @param block the cells
   */
  record Reading(Tabs.Tab tab, Block block) {}

  FormulaCell(Address at, Formula formula, Optional<Block> array) {
    this.at = at;
    this.formula = formula;
    this.array = array;
    this.subtotal = Trees.calls(formula.tree(), "SUBTOTAL");
  }

  /** The same cell, not worked out, for a workbook in which others hold something else. */
  FormulaCell copy() {
    return new FormulaCell(at, formula, array);
  }

  Address at() {
    return at;
  }

  Formula formula() {
    return formula;
  }

  /** Whether other subtotals pass over it. */
  boolean isSubtotal() {
    return subtotal;
  }

  /** The cells its result fills. */
  Optional<Block> array() {
    return array;
  }

  /** The cells it needs. */
  List<Reading> reads() {
    return reads;
  }

  void reads(List<Reading> all) {
    reads = List.copyOf(all);
  }

  Value value() {
    return value;
  }

  void become(Value other) {
    value = other;
    whole = other;
  }

  void forget() {
    become(NOT_YET);
  }

  void work(Scope scope) {
    if (array.isEmpty()) {
      value = formula.evaluate(scope);
    } else {
      whole = formula.evaluateArray(scope);
      value = element(0, 0);
    }
  }

  /** The element of an array formula's result in a row and column; single rows and columns stretch. */
  Value element(int row, int column) {
    if (!(whole instanceof Value.Matrix matrix)) {
      return whole;
    }
    int down = matrix.rows() == 1 ? 0 : row;
    int right = matrix.columns() == 1 ? 0 : column;
    return down < matrix.rows() && right < matrix.columns()
        ? matrix.at(down, right)
        : Signal.MISSING.value();
  }
}
