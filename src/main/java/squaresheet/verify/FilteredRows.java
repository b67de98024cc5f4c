package squaresheet.verify;

import java.util.List;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Sheet;

/** What a filter hides from the totals of what it shows. */
final class FilteredRows {

  private FilteredRows() {}

  /** The cells that the SUBTOTALs of a formula leave out, because a filter hides their rows. */
  static List<Address> under(FormulaCell formula) {
    return formula
        .calls("SUBTOTAL")
        .flatMap(call -> call.arguments().stream().skip(1))
        .flatMap(argument -> formula.cells(argument).stream())
        .flatMap(Cells::each)
        .filter(address -> isFilteredOut(formula.book(), address))
        .toList();
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
