package squaresheet.formula;

import java.util.Optional;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;

/** A cell with a formula while its workbook is worked out. */
final class FormulaCell {

  private static final Value NOT_YET = new Value.NotChecked("not worked out yet");

  private final Address at;
  private final Formula formula;
  private final Optional<Block> array;
  private Value value = NOT_YET;
  private Value whole = NOT_YET;

  FormulaCell(Address at, Formula formula, Optional<Block> array) {
    this.at = at;
    this.formula = formula;
    this.array = array;
  }

  Address at() {
    return at;
  }

  Formula formula() {
    return formula;
  }

  /** The cells its result fills. */
  Optional<Block> array() {
    return array;
  }

  Value value() {
    return value;
  }

  void become(Value other) {
    value = other;
    whole = other;
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
