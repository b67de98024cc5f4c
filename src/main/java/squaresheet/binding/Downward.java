package squaresheet.binding;

import java.util.List;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;

/** Fills a sheet from the top down, row by row. */
final class Downward {

  private final DraftSheet sheet;
  private int row;

  Downward(DraftSheet sheet, int row) {
    this.sheet = sheet;
    this.row = row;
  }

  DraftSheet sheet() {
    return sheet;
  }

  /** The row that is filled now, 0 and up. */
  int row() {
    return row;
  }

  /** Goes down so many rows. */
  Downward skip(int rows) {
    row += rows;
    return this;
  }

  /** Heads the columns from the left and goes on below. */
  void headings(List<String> texts) {
    for (int at = 0; at < texts.size(); at++) {
      put(at, Entry.text(texts.get(at)).as(Role.HEADING));
    }
    row++;
  }

  /** Puts a cell into the row that is filled now. */
  void put(int column, Entry entry) {
    sheet.put(new Ref(row, column), entry);
  }

  /** The cell of a column in the row that is filled now, as formulas of the sheet spell it: {@code $B5}. */
  String here(int column) {
    return "$" + Ref.letters(column) + (row + 1);
  }

  /** The place of a column in the row that is filled now, fixed, on this sheet: {@code Layout!$B$5}. */
  String there(int column) {
    return squaresheet.sheet.Address.quoted(sheet.name()) + "!"
        + TableDraft.dollars(new Ref(row, column));
  }
}
