package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does an unedited formula of the takeoff come to another value than the model? */
final class ValueOffModel implements Check<Modelled> {

  private static final CheckInfo INFO = new CheckInfo(
      "value-off-model", Severity.ERROR, "A value is not what the model makes of the typed cells");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Modelled cell) {
    boolean off = cell.isFormula()
        && !cell.isEdited()
        && cell.isWrongItself()
        && cell.slip().isEmpty();
    return off ? Stream.of(says(cell)) : Stream.empty();
  }

  private static Finding says(Modelled cell) {
    String says = cell.called() + " is " + Shown.of(cell.own()) + ", but the model makes "
        + Shown.of(cell.should())
        + " of the same typed cells; a name or a reference of its formula has moved";
    return cell.says(INFO, says);
  }
}
