package squaresheet.binding;

import squaresheet.formula.Calculation;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Workbook;

/** The cells of a workbook, every formula worked out anew; what was stored beside a formula is never looked at. */
final class BookValues {

  private final Workbook book;
  /** Made when the first formula is asked for; null before. */
  private Calculation calculation;

  BookValues(Workbook book) {
    this.book = book;
  }

  boolean isFormula(Address at) {
    return book.cell(at).isFormula();
  }

  /** What stands in a cell: typed, or worked out. */
  Value value(Address at) {
    Cell cell = book.cell(at);
    return cell.isFormula() ? calculation().value(at) : Value.of(cell.stored());
  }

  private Calculation calculation() {
    if (calculation == null) {
      calculation = Calculation.of(book);
    }
    return calculation;
  }

  /** The cell as it should be: with the value worked out anew in place of the stored one. */
  Cell cell(Address at) {
    Cell cell = book.cell(at);
    return cell.isFormula() ? new Cell(value(at).content(), cell.formula(), cell.format()) : cell;
  }
}
