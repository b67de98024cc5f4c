package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Did a spreadsheet program turn a typed pitch into a date? */
final class PitchBecameDate implements Check<PitchCell> {

  private static final CheckInfo INFO =
      new CheckInfo("pitch-became-date", Severity.ERROR, "A pitch was turned into a date");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(PitchCell cell) {
    return cell.findings(INFO);
  }
}
