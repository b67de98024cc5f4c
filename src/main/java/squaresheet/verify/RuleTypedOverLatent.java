package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does a cell of the takeoff hold a typed value that is right today and will stay behind? */
final class RuleTypedOverLatent implements Check<Modelled> {

  private static final CheckInfo INFO = new CheckInfo(
      "rule-typed-over-latent",
      Severity.NOTE,
      "A number stands in the place of a rule; it is still right");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Modelled cell) {
    boolean typed = !cell.isFormula() && cell.isWorkedOutInBook() && cell.isRight();
    return typed ? Stream.of(says(cell)) : Stream.empty();
  }

  private static Finding says(Modelled cell) {
    String says = cell.called() + " is a typed " + Shown.of(cell.there())
        + ", which is right today and will stay behind when an input changes; put the formula back";
    return cell.says(INFO, says);
  }
}
