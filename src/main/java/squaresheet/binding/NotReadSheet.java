package squaresheet.binding;

import java.util.List;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;

/** The rows of the tape sheet that could not be read, with what was understood of them. */
final class NotReadSheet {

  static final String NAME = "Not read";

  private NotReadSheet() {}

  static void write(DraftSheet sheet, List<FieldNotes.Unread> unread) {
    Sheets.head(
        sheet,
        "Not read",
        "These rows of the tape sheet are not in this workbook. Measure again, then type them in.");
    List<String> headings = List.of("Where", "As written", "Understood", "Why not");
    for (int at = 0; at < headings.size(); at++) {
      sheet.put(new Ref(3, at), Entry.text(headings.get(at)).as(Role.HEADING));
    }
    int row = 4;
    for (FieldNotes.Unread one : unread) {
      sheet.put(new Ref(row, 0), Entries.note(one.where().toString()));
      sheet.put(new Ref(row, 1), Entries.note(String.join(" | ", one.written())));
      sheet.put(new Ref(row, 2), Entries.note(one.understood()));
      sheet.put(new Ref(row, 3), Entries.note(one.why()));
      row++;
    }
    sheet.width(0, 26).width(1, 36).width(2, 36).width(3, 46);
    Sheets.table(sheet, 3, 0);
  }
}
