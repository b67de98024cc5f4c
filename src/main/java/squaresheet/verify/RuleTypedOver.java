package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Does a cell of the takeoff hold a typed value that its rule would not give? */
final class RuleTypedOver implements Check<Modelled> {

  private static final CheckInfo INFO =
      new CheckInfo("rule-typed-over", Severity.ERROR, "A number stands in the place of a rule");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Modelled cell) {
    boolean typed = !cell.isFormula()
        && !cell.isRight()
        && !cell.isSimulatedWaste()
        && !InputIsText.isTextForNumber(cell);
    return typed ? Stream.of(says(cell)) : Stream.empty();
  }

  private static Finding says(Modelled cell) {
    String there =
        cell.there() instanceof Value.Blank ? "blank" : "a typed " + Shown.of(cell.there());
    String says =
        cell.called() + " is " + there + " in the place of its formula, but the model makes "
            + Shown.of(cell.should())
            + cell.slip()
                .map(slip -> "; the typed value is exactly that with " + slip)
                .orElse("")
            + "; put the formula back"
            + cell.ruled().map(rule -> ", over names it is =" + rule).orElse("");
    return cell.says(INFO, says);
  }
}
