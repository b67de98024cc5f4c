package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Did a spreadsheet program turn a typed pitch into a time of day? */
final class PitchBecameTime implements Check<PitchCell> {

  private static final CheckInfo INFO =
      new CheckInfo("pitch-became-time", Severity.ERROR, "A pitch was turned into a time of day");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(PitchCell cell) {
    return cell.findings(INFO);
  }
}
