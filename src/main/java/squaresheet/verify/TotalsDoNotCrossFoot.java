package squaresheet.verify;

import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Ref;

/** Do the totals of the rows of a table make another total than those of its columns? */
final class TotalsDoNotCrossFoot implements Check<Corner> {

  private static final CheckInfo INFO = new CheckInfo(
      "totals-do-not-cross-foot",
      Severity.ERROR,
      "Rows and columns of a table add up to two totals");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Corner corner) {
    return corner.isNear(corner.byRows(), corner.byColumns())
        ? Stream.empty()
        : Stream.of(says(corner));
  }

  private static Finding says(Corner corner) {
    Optional<Ref> odd = corner.odd();
    Ref at = odd.orElse(corner.sum().formula().at().ref());
    double should = odd.map(corner::should).orElse(corner.byColumns());
    String says = "the rows make " + Shown.number(corner.byRows()) + " at "
        + corner.sum().formula().at().ref() + " and the columns " + Shown.number(corner.byColumns())
        + odd.map(ref -> "; the cells that " + ref + " stands for make " + Shown.number(should))
            .orElse("");
    return Says.about(
        INFO, corner.book(), corner.sum().tab().at(at), new Value.Number(should), says);
  }
}
