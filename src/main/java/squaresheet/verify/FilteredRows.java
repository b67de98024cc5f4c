package squaresheet.verify;

import java.util.List;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Sheet;

/** What a filter hides from the totals of what it shows. */
final class FilteredRows {

  private FilteredRows() {}

  /** The cells that the SUBTOTALs of a formula leave out, because a filter hides their rows or they are SUBTOTALs. */
  static List<Address> under(FormulaCell formula) {
    return formula
        .calls("SUBTOTAL")
        .flatMap(call -> call.arguments().stream().skip(1))
        .flatMap(argument -> formula.cells(argument).stream())
        .flatMap(Cells::each)
        .filter(address ->
            isFilteredOut(formula.book(), address) || isSubtotal(formula.book(), address))
        .toList();
  }

  /** Subtotals skip each other, so that a total over all rows counts every row once. */
  private static boolean isSubtotal(Book book, Address address) {
    return book.formula(address)
        .filter(formula -> Nodes.calls(formula.tree(), "SUBTOTAL").findAny().isPresent())
        .isPresent();
  }

  private static boolean isFilteredOut(Book book, Address address) {
    return book.workbook()
        .sheet(address.sheet())
        .filter(sheet -> sheet.isRowHidden(address.ref().row()))
        .flatMap(Sheet::filter)
        .filter(filter -> holds(filter, address))
        .isPresent();
  }

  private static boolean holds(Block filter, Address address) {
    return address.ref().row() > filter.first().row()
        && address.ref().row() <= filter.last().row();
  }
}
