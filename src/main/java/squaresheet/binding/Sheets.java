package squaresheet.binding;

import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.DraftSheet.Paper;
import squaresheet.sheet.DraftSheet.Print;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;

/** What all sheets of a workbook have alike. */
final class Sheets {

  private Sheets() {}

  /** A title and a line about the sheet. */
  static void head(DraftSheet sheet, String title, String about) {
    sheet.put(new Ref(0, 0), Entry.text(title).as(Role.TITLE));
    sheet.put(new Ref(1, 0), Entry.text(about).as(Role.UNIT));
  }

  /** A sheet that holds a table: headings in sight and repeated, lying on its long side. */
  static void table(DraftSheet sheet, int heading, int columns) {
    sheet.freeze(heading + 1, columns);
    sheet.print(new Print(Paper.LETTER, true, heading + 1, "", sheet.name(), 0.5));
  }

  /** A sheet to be read: upright. */
  static void page(DraftSheet sheet) {
    sheet.print(new Print(Paper.LETTER, false, 0, "", sheet.name(), 0.5));
  }
}
