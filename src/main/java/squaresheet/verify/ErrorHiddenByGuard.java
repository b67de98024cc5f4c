package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;

/** Does an IFERROR or an ISERROR stand over a reference that no longer exists? */
final class ErrorHiddenByGuard implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "error-hidden-by-guard", Severity.ERROR, "A guard hides a formula that is broken");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return guarded(cell).limit(1).map(guarded -> says(cell, guarded));
  }

  /** What is broken under a guard. */
  static Stream<Node> guarded(FormulaCell cell) {
    return cell.calls("IFERROR", "IFNA", "ISERROR", "ISERR", "ISREF")
        .filter(call -> !call.arguments().isEmpty())
        .map(call -> call.arguments().get(0))
        .filter(guarded -> BrokenReference.isIn(cell.book(), guarded));
  }

  private static Finding says(FormulaCell cell, Node guarded) {
    String says = "shows " + Shown.of(cell.value()) + " because " + Formula.of(guarded)
        + " is broken and a guard hides it; point it to the right cells";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
