package squaresheet.binding;

import java.util.List;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;

/** What stands on the tape sheet besides readings, labels and settings, kept as it was written. */
final class RemarksSheet {

  static final String NAME = "Remarks";

  private static final int HEADING = 3;

  private RemarksSheet() {}

  static void write(Draft draft, List<FieldNotes.Remark> remarks) {
    DraftSheet sheet = draft.sheet(NAME);
    Sheets.head(
        sheet,
        "Remarks",
        "Words on the tape sheet, for people; no number of this workbook reads them.");
    TableDraft table = new TableDraft(sheet, HEADING, remarks.size());
    table.add(Column.of(
        "where", "Where", 30, item -> Entries.note(remarks.get(item).where().toString())));
    table.add(
        Column.of("about", "Beside", 36, item -> Entries.note(remarks.get(item).about())));
    table.add(Column.of(
        "text", "As written", 60, item -> Entries.note(remarks.get(item).text())));
    table.write(draft);
    Sheets.table(sheet, HEADING, 0);
  }
}
