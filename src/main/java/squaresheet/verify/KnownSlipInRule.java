package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is a value of the takeoff exactly what a known slip would make of it? */
final class KnownSlipInRule implements Check<Modelled> {

  private static final CheckInfo INFO = new CheckInfo(
      "known-slip-in-rule", Severity.ERROR, "A value is off the model by a known slip");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Modelled cell) {
    return cell.isFormula() && cell.isWrongItself()
        ? cell.slip().stream().map(slip -> says(cell, slip))
        : Stream.empty();
  }

  private static Finding says(Modelled cell, String slip) {
    String says = cell.called() + " is " + Shown.of(cell.own()) + ", but the model makes "
        + Shown.of(cell.should()) + "; it is exactly that with " + slip + Slips.difference(cell);
    return cell.says(INFO, says);
  }
}
