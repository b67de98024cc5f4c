package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Inference.Clash;
import squaresheet.formula.Inference.Kind;
import squaresheet.units.Unit;

/** Are feet and square feet, or feet and inches, added up, subtracted or compared? */
final class UnlikeUnitsAdded implements Check<MeasuredCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "unlike-units-added", Severity.WARNING, "Different things are added or compared");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(MeasuredCell cell) {
    return cell.clashes(Kind.ADDED, Kind.SIZES)
        .filter(UnlikeUnitsAdded::isOneUnit)
        .limit(1)
        .map(clash -> cell.says(INFO, clash));
  }

  /** Packs and pieces are counted together on purpose, and a plain number goes with anything. */
  private static boolean isOneUnit(Clash clash) {
    Unit left = clash.left().orElseThrow();
    Unit right = clash.right().orElseThrow();
    boolean counted = left.isCounted() && right.isCounted();
    boolean plain =
        left.withoutCounts().isLike(Unit.RATIO) || right.withoutCounts().isLike(Unit.RATIO);
    return !counted && !plain;
  }
}
