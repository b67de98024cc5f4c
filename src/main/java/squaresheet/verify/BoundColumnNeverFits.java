package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Do most cells of a bound column differ from what they should be, so that it is rather something else? */
final class BoundColumnNeverFits implements Check<DoubtedColumn> {

  private static final CheckInfo INFO = new CheckInfo(
      "bound-column-never-fits",
      Severity.WARNING,
      "Most cells of a bound column are not what they are bound to be");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(DoubtedColumn column) {
    BoundValue first =
        column.cells().stream().filter(it -> !it.isRight()).findFirst().orElseThrow();
    String says = "the column of " + first.at() + " is bound as " + column.table() + ", "
        + column.property().replace('_', ' ') + ", but only " + column.fit() + " of "
        + Says.count(column.cells().size(), "cell") + " fit; here " + first.how() + " make "
        + Shown.number(first.should().get(0))
        + "; either it is something else, or they are all wrong; it is not checked";
    return Stream.of(Says.about(INFO, column.model().book(), first.at(), says));
  }
}
