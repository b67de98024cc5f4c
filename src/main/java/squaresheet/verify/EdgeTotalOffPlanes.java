package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is the length of all ridges, hips, valleys, eaves or rakes what the sides of the planes make? */
final class EdgeTotalOffPlanes implements Check<EdgeTotal> {

  private static final CheckInfo INFO = new CheckInfo(
      "edge-total-off-planes",
      Severity.WARNING,
      "A length of edges is not what the sides of the planes make");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(EdgeTotal total) {
    return total.isRight() ? Stream.empty() : Stream.of(total.says(INFO));
  }
}
