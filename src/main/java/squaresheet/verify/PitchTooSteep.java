package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is a pitch steeper than any roof that takes shingles? */
final class PitchTooSteep implements Check<PitchCell> {

  private static final CheckInfo INFO =
      new CheckInfo("pitch-too-steep", Severity.ERROR, "A pitch is steeper than 24 in 12");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(PitchCell cell) {
    return cell.findings(INFO);
  }
}
