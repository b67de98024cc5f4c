package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;

/** Does a total that people see count a row that they do not see? */
final class HiddenRowInTotal implements Check<SumCell> {

  private static final CheckInfo INFO =
      new CheckInfo("hidden-row-in-total", Severity.WARNING, "A hidden row counts in a total");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(SumCell sum) {
    if (!sum.isColumn()
        || sum.tab().isHidden()
        || skipsHidden(sum)
        || sum.tab().sheet().filter().isPresent()) {
      return Stream.empty();
    }
    return sum.tab()
        .hiddenRows(sum.first(), sum.last())
        .filter(row -> sum.book().number(sum.tab().at(sum.ref(row))).orElse(0) != 0)
        .mapToObj(row -> says(sum, row))
        .limit(1);
  }

  private static boolean skipsHidden(SumCell sum) {
    return sum.isSubtotal()
        && sum.call().arguments().get(0) instanceof Node.Number number
        && number.value() > 100;
  }

  private static Finding says(SumCell sum, int row) {
    Address hidden = sum.tab().at(sum.ref(row));
    String says =
        "holds " + Shown.of(sum.book().value(hidden)) + " in a hidden row, which the total at "
            + sum.formula().at() + " counts; show the row, or take it out of the total";
    return Says.about(INFO, sum.book(), hidden, says);
  }
}
