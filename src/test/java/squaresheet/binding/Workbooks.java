package squaresheet.binding;

import java.nio.file.Path;
import java.util.List;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Role;
import squaresheet.sheet.Workbook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** Puts drawn workbooks into files. */
final class Workbooks {

  private Workbooks() {}

  /** Writes the workbook with the sheets that the edits add. */
  static void write(Workbook book, List<Edit> edits, Path file) {
    Draft draft = new Draft();
    book.sheets().forEach(sheet -> {
      DraftSheet to = draft.sheet(sheet.name());
      sheet
          .cells()
          .forEach(placed -> to.put(
              placed.ref(),
              new Entry(
                  placed.cell().stored(),
                  placed.cell().formula(),
                  Role.PLAIN,
                  placed.cell().format())));
    });
    for (Edit edit : edits) {
      if (edit instanceof Edit.AddSheet add) {
        DraftSheet to = draft.sheet(add.sheet().name());
        add.sheet().entries().forEach(to::put);
        to.visibility(add.sheet().visibility());
      }
    }
    Xlsx.write(draft, file, Existing.REPLACE);
  }
}
