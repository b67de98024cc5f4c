package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does a total that other formulas read leave out the rows that a filter hides? */
final class SubtotalUnderFilter implements Check<SumCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "subtotal-under-filter", Severity.WARNING, "A filter leaves rows out of a total");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(SumCell sum) {
    boolean filtered = sum.isSubtotal()
        && sum.isColumn()
        && sum.tab().sheet().filter().isPresent()
        && sum.book().links().isRead(sum.formula().at());
    return filtered && HiddenRows.left(sum) != 0 ? Stream.of(says(sum)) : Stream.empty();
  }

  private static Finding says(SumCell sum) {
    double left = HiddenRows.left(sum);
    String says = "is " + sum.formula().shown() + " under a filter that hides rows with "
        + Shown.number(left) + ", and other formulas count with it; clear the filter, or use SUM";
    return Says.about(INFO, sum.book(), sum.formula().at(), says);
  }
}
