package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Inference.Clash;
import squaresheet.formula.Inference.Kind;
import squaresheet.units.Unit;

/** Are feet divided by inches, or the like, without the 12 between them? */
final class ConversionLeftOut implements Check<MeasuredCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "conversion-left-out", Severity.WARNING, "Feet meet inches in a product or quotient");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(MeasuredCell cell) {
    return cell.clashes(Kind.UNCANCELLED)
        .filter(clash -> !isMoney(clash))
        .limit(1)
        .map(clash -> cell.says(INFO, clash));
  }

  private static boolean isMoney(Clash clash) {
    return clash.left().filter(Unit::isMoney).isPresent()
        || clash.right().filter(Unit::isMoney).isPresent();
  }
}
