package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Does the workbook read a copy of a sheet, while the sheet itself went on being edited? */
final class CopiedSheetRead implements Check<LikeSheets> {

  private static final CheckInfo INFO = new CheckInfo(
      "copied-sheet-read", Severity.WARNING, "A copy of a sheet is read in its place");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(LikeSheets sheets) {
    List<Address> readers = sheets.readersOf(sheets.tab());
    return readers.isEmpty()
        ? Stream.empty()
        : sheets.like().stream()
            .filter(other -> LikeSheets.isCopy(sheets.tab(), other))
            .filter(other -> sheets.readersOf(other).isEmpty())
            .filter(other -> LikeSheets.differ(sheets.tab(), other))
            .limit(1)
            .map(other -> says(sheets, other, readers));
  }

  private static Finding says(LikeSheets sheets, Tab original, List<Address> readers) {
    String more = readers.size() == 1
        ? ""
        : " (and " + Says.count(readers.size() - 1, "other formula") + " with it)";
    String says = "reads the sheet '" + sheets.tab().name() + "'" + more
        + ", which looks like a copy of '" + original.name()
        + "'; other numbers stand on that one and no formula reads them";
    return Says.about(INFO, sheets.book(), readers.get(0), says);
  }
}
