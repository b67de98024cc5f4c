package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is an angle in degrees typed where the other rows have the rise per 12? */
final class PitchLikeDegrees implements Check<PitchCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "pitch-like-degrees", Severity.WARNING, "A rise per 12 looks like an angle in degrees");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(PitchCell cell) {
    return cell.findings(INFO);
  }
}
