package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.formula.Value;

/** Was the workbook saved by a program that does not work out formulas? */
final class StoredValuesMissing implements Check<Book> {

  private static final CheckInfo INFO =
      new CheckInfo("stored-values-missing", Severity.NOTE, "Formulas have no stored values");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Book book) {
    long without = book.formulas().keySet().stream()
        .filter(cell -> book.cell(cell).stored().isBlank())
        .filter(cell -> !isNothing(book.value(cell)))
        .count();
    String says = Says.count(without, "formula") + " of " + book.formulas().size()
        + " have no stored value, so viewers show nothing there; open the file in a spreadsheet program"
        + " and save it";
    return without * 2 > book.formulas().size()
        ? Stream.of(new Finding(INFO, new Where.InFile(book.file()), says))
        : Stream.empty();
  }

  private static boolean isNothing(Value value) {
    return value instanceof Value.Text text && text.value().isEmpty();
  }
}
