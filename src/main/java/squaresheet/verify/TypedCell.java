package squaresheet.verify;

import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Ref;

/**
 * A cell with typed content.
 *
 * @param tab the sheet
 * @param ref the place
 * @param cell what is there
 */
record TypedCell(Tab tab, Ref ref, Cell cell) {

  Book book() {
    return tab.book();
  }

  Address at() {
    return tab.at(ref);
  }

  Where where() {
    return book().where(at());
  }

  String text() {
    return tab.text(ref);
  }

  String heading() {
    return tab.headings(ref);
  }

  /** What the cell is called: the heading above it in a table, the label beside it elsewhere. */
  String called() {
    return tab.label(ref) + " " + heading();
  }
}
