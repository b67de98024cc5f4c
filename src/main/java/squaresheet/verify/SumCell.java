package squaresheet.verify;

import java.util.Optional;
import squaresheet.formula.Node;
import squaresheet.sheet.Ref;

/**
 * A formula that is, or contains as a term, the sum of a block.
 *
 * @param formula the cell
 * @param call the SUM or SUBTOTAL
 * @param cells the block
 */
record SumCell(FormulaCell formula, Node.Call call, Cells cells) {

  static Optional<SumCell> of(FormulaCell cell, Node.Call call) {
    Optional<Node> many = call.function().equals("SUM")
        ? call.arguments().stream()
            .filter(it -> cell.cells(it).filter(in -> !in.isOne()).isPresent())
            .findFirst()
        : call.arguments().stream().skip(1).findFirst();
    return many.flatMap(cell::cells).map(cells -> new SumCell(cell, call, cells));
  }

  Book book() {
    return formula.book();
  }

  boolean isSubtotal() {
    return !call.function().equals("SUM");
  }

  /** Whether the block is one column, with more than one row. */
  boolean isColumn() {
    return cells.block().columns() == 1 && cells.block().rows() > 1;
  }

  boolean isRow() {
    return cells.block().rows() == 1 && cells.block().columns() > 1;
  }

  Axis axis() {
    return isRow() ? Axis.ACROSS : Axis.DOWN;
  }

  Tab tab() {
    return book().tab(cells.sheet());
  }

  int across() {
    return axis().across(cells.block().first());
  }

  int first() {
    return axis().along(cells.block().first());
  }

  int last() {
    return axis().along(cells.block().last());
  }

  Ref ref(int along) {
    return axis().ref(along, across());
  }

  /** Whether the total stands at the end of the column or row that it adds up. */
  boolean standsBelow() {
    Ref at = formula.at().ref();
    return formula.at().sheet().equals(cells.sheet())
        && axis().across(at) == across()
        && axis().along(at) > last();
  }
}
