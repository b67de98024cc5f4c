package squaresheet.verify;

import java.util.LinkedHashMap;
import java.util.Map;
import squaresheet.finding.Fix;
import squaresheet.formula.Calculation;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Scope;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Edit;

/**
 * The values of a workbook's cells, worked out anew from what is typed, as it stands or as it would be if some cells held
 * something else; stored results of formulas are never used.
 *
 * @param calculation who works them out
 */
record Reckoning(Calculation calculation) {

  /** The values as they would be if these cells held something else. */
  Reckoning putting(Map<Address, Value> other) {
    return new Reckoning(calculation.putting(other));
  }

  /** What the cells of a remedy would hold, each formula worked out with what is put before it. */
  Map<Address, Value> values(Fix fix) {
    Map<Address, Value> put = new LinkedHashMap<>();
    for (Edit edit : fix.edits()) {
      if (edit instanceof Edit.SetContent content) {
        put.put(content.cell(), Value.of(content.content()));
      } else if (edit instanceof Edit.SetFormula formula) {
        Reckoning so = put.isEmpty() ? this : putting(put);
        put.put(formula.cell(), so.evaluate(Formula.of(formula.formula()), formula.cell()));
      }
    }
    return put;
  }

  /** What the formula would come to in this cell. */
  Value evaluate(Formula formula, Address cell) {
    return formula.evaluate(scope(cell));
  }

  /** What the part of a formula in this cell comes to. */
  Value evaluate(Node part, Address cell) {
    return evaluate(Formula.of(part), cell);
  }

  /** The value of a cell, blank where there is nothing. */
  Value value(Address cell) {
    return calculation.value(cell);
  }

  /** What stands behind the references of a formula in that cell. */
  Scope scope(Address cell) {
    return calculation.scope(cell);
  }
}
