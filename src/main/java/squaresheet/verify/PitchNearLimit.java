package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does a formula turn at a limit that lies within what a coarsely written pitch may be? */
final class PitchNearLimit implements Check<RoundedPitch> {

  private static final CheckInfo INFO = new CheckInfo(
      "pitch-near-limit", Severity.WARNING, "A pitch may lie on either side of a limit");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(RoundedPitch pitch) {
    return pitch.span().named().isPresent()
        ? Stream.empty()
        : pitch.turning(pitch.span().least(), pitch.span().most()).stream()
            .map(reader -> says(pitch, reader));
  }

  private static Finding says(RoundedPitch pitch, FormulaCell reader) {
    String says = "may be anything from " + pitch.span().show() + " as it is written, and "
        + reader.at() + " (" + reader.shown() + ") comes out otherwise within that; write one digit"
        + " more, and show it: 18.0 where 18 is exact";
    return Says.about(INFO, pitch.book(), pitch.cell().at(), says);
  }
}
