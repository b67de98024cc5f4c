package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Does a cell for typing hold a text where a number must be, which the formulas behind it cannot count with? */
final class InputIsText implements Check<Modelled> {

  private static final CheckInfo INFO =
      new CheckInfo("input-is-text", Severity.ERROR, "A text stands where a number must be typed");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Modelled cell) {
    return isTextForNumber(cell) ? Stream.of(says(cell)) : Stream.empty();
  }

  /** Whether people type here, and typed a text that reads as a number. */
  static boolean isTextForNumber(Modelled cell) {
    return !cell.isFormula()
        && !cell.isWorkedOutInBook()
        && cell.there() instanceof Value.Text
        && cell.should() instanceof Value.Number;
  }

  private static Finding says(Modelled cell) {
    String says = cell.called() + " is the text " + Shown.of(cell.there())
        + ", which a person reads as " + Shown.of(cell.should())
        + " and a formula cannot count with;"
        + " type the number " + Shown.of(cell.should());
    return cell.says(INFO, says);
  }
}
