package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/** Does the workbook keep only the decimals that its cells show? */
final class PrecisionAsDisplayed implements Check<Book> {

  private static final CheckInfo INFO = new CheckInfo(
      "precision-as-displayed", Severity.WARNING, "Numbers are cut to what they show");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Book book) {
    String says =
        "is set to keep only the decimals that show, so that squares and prices lose their fractions"
            + " for good; switch 'precision as displayed' off and type what was cut again";
    return book.workbook().calculation().fullPrecision()
        ? Stream.empty()
        : Stream.of(new Finding(INFO, new Where.InFile(book.file()), says));
  }
}
