package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;

/** Does one formula of a run hold another number than its neighbours? */
final class OddConstantInRun implements Check<Fill> {

  private static final CheckInfo INFO = new CheckInfo(
      "odd-constant-in-run", Severity.WARNING, "One formula of a column holds another number");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Fill fill) {
    return OddInRun.in(fill)
        .filter(OddInRun::isConstant)
        .filter(odd -> !MetricRows.isOfOtherUnit(fill, odd.along()))
        .map(OddConstantInRun::says);
  }

  private static Finding says(OddInRun odd) {
    Fill fill = odd.fill();
    Node.Number found = (Node.Number) odd.differences().get(0).found();
    Node.Number wanted = (Node.Number) odd.differences().get(0).wanted();
    String says = "is =" + odd.formula() + " with " + Shown.number(found.value()) + " in it, but "
        + fill.others() + " have " + Shown.number(wanted.value()) + "; with that it makes "
        + Shown.of(fill.expected(odd.along()));
    return Says.about(INFO, fill.book(), fill.at(odd.along()), fill.expected(odd.along()), says)
        .with(fill.fix(odd.along()));
  }
}
