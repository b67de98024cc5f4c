package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Inference.Clash;
import squaresheet.formula.Inference.Kind;
import squaresheet.units.Unit;

/** Are squares multiplied by a price per bundle, or square feet by a price per roll? */
final class PriceForAnotherUnit implements Check<MeasuredCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "price-for-another-unit",
      Severity.WARNING,
      "A quantity is multiplied by a price for another unit");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(MeasuredCell cell) {
    return cell.clashes(Kind.MULTIPLIED, Kind.UNCANCELLED)
        .filter(PriceForAnotherUnit::isMoney)
        .limit(1)
        .map(clash -> cell.says(INFO, clash));
  }

  private static boolean isMoney(Clash clash) {
    return clash.left().filter(Unit::isMoney).isPresent()
        || clash.right().filter(Unit::isMoney).isPresent();
  }
}
