package squaresheet.verify;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;

/** Does an amount depend on the day the workbook is opened? */
final class DateDrivesAmount implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("date-drives-amount", Severity.WARNING, "An amount changes with the day");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    boolean today = cell.calls("TODAY", "NOW").findAny().isPresent();
    return today
        ? cell.book().links().dependents(List.of(cell.at())).stream()
            .filter(reader -> isAmount(cell.book(), reader))
            .limit(1)
            .map(reader -> says(cell, reader))
        : Stream.empty();
  }

  private static boolean isAmount(Book book, Address reader) {
    boolean last = book.links().readers(reader).isEmpty();
    boolean number = book.cell(reader).stored() instanceof Content.Numeric
        && !book.cell(reader).isDate();
    boolean money = book.cell(reader).format().matches(".*(\\$|€|£|#,##0).*|.*0\\.00.*")
        || Words.isTotal(book.tab(reader.sheet()).label(reader.ref()))
        || book.tab(reader.sheet()).label(reader.ref()).toLowerCase(Locale.ROOT).contains("price");
    return last && number && money;
  }

  private static Finding says(FormulaCell cell, Address reader) {
    String says = "is " + cell.shown() + ", and the amount at " + reader
        + " depends on it, so the bid changes with the day it is opened; type the date of the bid";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
