package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Formula;

/** Does one formula of a run read the row of another item? */
final class ReferenceOffByOne implements Check<Fill> {

  private static final CheckInfo INFO = new CheckInfo(
      "reference-off-by-one", Severity.WARNING, "One formula of a column reads another row's cell");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Fill fill) {
    return OddInRun.in(fill).filter(OddInRun::isAnotherItem).map(ReferenceOffByOne::says);
  }

  private static Finding says(OddInRun odd) {
    Fill fill = odd.fill();
    Formula found = Formula.of(odd.differences().get(0).found());
    Formula wanted = Formula.of(odd.differences().get(0).wanted());
    String says = "reads " + found + ", but " + fill.others() + " read their own "
        + fill.table().axis().line() + ", which is " + wanted + " here and makes "
        + Shown.of(fill.expected(odd.along()));
    return Says.about(INFO, fill.book(), fill.at(odd.along()), fill.expected(odd.along()), says)
        .with(fill.fix(odd.along()));
  }
}
