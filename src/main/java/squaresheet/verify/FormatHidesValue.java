package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Does a total count a value that its number format keeps out of sight? */
final class FormatHidesValue implements Check<SumCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "format-hides-value", Severity.WARNING, "A number format hides a value that counts");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(SumCell sum) {
    return sum.tab().unseen().stream()
        .filter(sum.cells()::contains)
        .filter(cell -> sum.book().number(cell).orElse(0) != 0)
        .limit(1)
        .map(cell -> says(sum, cell));
  }

  private static Finding says(SumCell sum, Address cell) {
    String says = "holds " + Shown.of(sum.book().value(cell))
        + " under a number format that shows nothing, and the total at "
        + sum.formula().at() + " counts it; give the cell a number format that shows";
    return Says.about(INFO, sum.book(), cell, says);
  }
}
