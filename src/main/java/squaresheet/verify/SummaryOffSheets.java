package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does the first sheet show something else than the sheets that it repeats? */
final class SummaryOffSheets implements Check<SummaryCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "summary-off-sheets",
      Severity.ERROR,
      "The summary does not show what the other sheets work out");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(SummaryCell cell) {
    boolean off = cell.isOff()
        && !Words.saysMeasured(
            cell.book().tab(cell.at().sheet()).wordsAbout(cell.at().ref()));
    return off ? Stream.of(says(cell)) : Stream.empty();
  }

  private static Finding says(SummaryCell cell) {
    String what = cell.isFormula()
        ? "is =" + cell.book().formula(cell.at()).map(Object::toString).orElse("")
        : "is a typed " + Shown.of(cell.there());
    String why = cell.isSame()
        ? "which is right today and will not follow what it repeats"
        : "but the sheets behind it make " + Shown.of(cell.should());
    String says = what + " in the row '" + cell.label() + "', " + why + "; put =" + cell.right();
    return Says.about(INFO, cell.book(), cell.at(), cell.should(), says);
  }
}
