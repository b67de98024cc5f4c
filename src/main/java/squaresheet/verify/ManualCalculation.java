package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/** Is manual calculation left on? */
final class ManualCalculation implements Check<Book> {

  private static final CheckInfo INFO = new CheckInfo(
      "manual-calculation", Severity.NOTE, "The workbook is calculated only on request");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Book book) {
    String says = "is set to manual calculation, so that what is typed next changes no result;"
        + " set calculation to automatic";
    return book.workbook().calculation().manual()
        ? Stream.of(new Finding(INFO, new Where.InFile(book.file()), says))
        : Stream.empty();
  }
}
