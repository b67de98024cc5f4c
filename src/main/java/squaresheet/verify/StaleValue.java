package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Fix;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;

/** Does the file show another value than the formula comes to with what is typed now? */
final class StaleValue implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "stale-value", Severity.ERROR, "The value shown is not what the formula makes now");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    boolean stale = isStale(cell.book(), cell.at());
    boolean first = stale
        && cell.book()
            .links()
            .eachFormulaRead(cell.at())
            .noneMatch(read -> isStale(cell.book(), read));
    return first ? Stream.of(says(cell)) : Stream.empty();
  }

  static boolean isStale(Book book, Address at) {
    Value now = book.value(at);
    Content stored = book.cell(at).stored();
    boolean comparable = now.isChecked()
        && !stored.isBlank()
        && !book.moving().contains(at)
        && book.workbook()
            .sheet(at.sheet())
            .filter(it -> it.arrayAt(at.ref()).isEmpty())
            .isPresent();
    return comparable && !Shown.near(now, Value.of(stored));
  }

  private static Finding says(FormulaCell cell) {
    long behind = cell.book().links().dependents(List.of(cell.at())).stream()
        .filter(other -> isStale(cell.book(), other))
        .count();
    String says = "shows " + Shown.of(cell.cell().stored()) + ", but " + cell.shown() + " makes "
        + Shown.of(cell.value()) + " with what is typed now"
        + (behind == 0
            ? ""
            : "; " + Says.count(behind, "value") + " behind it " + (behind == 1 ? "is" : "are")
                + " old too")
        + "; recalculate the workbook and save it";
    return new Finding(
        INFO,
        cell.where(),
        Shown.of(cell.cell().stored()),
        Shown.of(cell.value()),
        says,
        "",
        cell.value() instanceof Value.Fault
            ? Fix.NONE
            : Fix.formula(cell.at(), cell.cell().formula()));
  }
}
