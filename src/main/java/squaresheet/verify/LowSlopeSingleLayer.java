package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Does a plane from 2:12 up to 4:12 have a single layer of underlayment? */
final class LowSlopeSingleLayer implements Check<Underlayment> {

  private static final CheckInfo INFO = new CheckInfo(
      "low-slope-single-layer", Severity.WARNING, "Underlayment is single on a low slope");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Underlayment plane) {
    boolean single = plane.rise() >= 2
        && plane.rise() < 4
        && plane.layers() == 1
        && !Words.saysFlat(plane.words())
        && !Words.saysOutside(plane.words());
    return single ? Stream.of(says(plane)) : Stream.empty();
  }

  private static Finding says(Underlayment plane) {
    String says = "is one layer at " + Shown.number(plane.rise())
        + ":12; under asphalt shingles from 2:12 up to 4:12 underlayment is doubled (IRC R905.2.2)";
    return Says.about(INFO, plane.book(), plane.at(), new Value.Number(2), says);
  }
}
