package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Inference.Clash;
import squaresheet.formula.Inference.Kind;
import squaresheet.units.Unit;

/** Does a formula come to square feet where its heading says squares? */
final class ResultInOtherUnit implements Check<MeasuredCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "result-in-other-unit",
      Severity.WARNING,
      "A formula comes to another unit than its heading says");

  private static final List<String> TIMES = List.of("hour", "day");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(MeasuredCell cell) {
    return cell.clashes(Kind.RESULT)
        .filter(ResultInOtherUnit::isMeasured)
        .limit(1)
        .map(clash -> cell.says(INFO, clash));
  }

  /** Hours for each square are typed into formulas as plain numbers. */
  private static boolean isTime(Clash clash) {
    return Stream.of(clash.left(), clash.right())
        .flatMap(unit -> unit.stream())
        .anyMatch(unit -> TIMES.contains(unit.toString()));
  }

  /** Pieces and plain numbers may stand under any heading, and packs are called packs, bundles or rolls. */
  private static boolean isMeasured(Clash clash) {
    boolean packs = clash.left().filter(Unit::isCounted).isPresent()
        && clash.right().filter(Unit::isCounted).isPresent();
    return !packs
        && !isTime(clash)
        && Stream.of(clash.left(), clash.right())
            .flatMap(unit -> unit.stream())
            .noneMatch(unit -> unit.withoutCounts().isLike(Unit.RATIO));
  }
}
