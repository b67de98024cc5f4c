package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.units.Pitch;

/** Does a formula put an angle or percent on the other side of a limit than the pitch it was rounded from? */
final class PitchOffNamed implements Check<RoundedPitch> {

  private static final CheckInfo INFO = new CheckInfo(
      "pitch-off-named",
      Severity.ERROR,
      "A rounded angle or percent falls on the wrong side of a limit");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(RoundedPitch pitch) {
    return pitch.span().named().stream()
        .flatMap(named -> pitch.turning(pitch.span().written(), named).stream()
            .map(reader -> says(pitch, named, reader)));
  }

  private static Finding says(RoundedPitch pitch, Pitch named, FormulaCell reader) {
    double wanted = pitch.inCell(named);
    String says = "is " + named + " to its last digit, but " + reader.at() + " (" + reader.shown()
        + ") comes out otherwise for it than for " + named + "; type "
        + Shown.of(new Value.Number(wanted)) + " for " + named;
    return Says.about(INFO, pitch.book(), pitch.cell().at(), new Value.Number(wanted), says);
  }
}
