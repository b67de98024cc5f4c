package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Value;

/** Does an IFERROR answer for a value that fails although what it reads is filled in? */
final class GuardedValueFails implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "guarded-value-fails",
      Severity.WARNING,
      "A guard replaces a value that cannot be worked out");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return cell.calls("IFERROR", "IFNA")
        .filter(call -> !call.arguments().isEmpty())
        .map(call -> call.arguments().get(0))
        .filter(guarded -> !BrokenReference.isIn(cell.book(), guarded))
        .filter(
            guarded -> cell.book().reckoning().evaluate(guarded, cell.at()) instanceof Value.Fault)
        .filter(guarded -> isFilledIn(cell, guarded))
        .limit(1)
        .map(guarded -> says(cell, guarded));
  }

  private static boolean isFilledIn(FormulaCell cell, Node guarded) {
    List<Cells> read = cell.book().references().read(guarded, cell.at());
    return !read.isEmpty()
        && read.stream()
            .filter(Cells::isOne)
            .map(one -> cell.book().value(one.first()))
            .allMatch(value -> (value instanceof Value.Number number && number.value() != 0)
                || (value instanceof Value.Text text && !text.value().isEmpty()));
  }

  private static Finding says(FormulaCell cell, Node guarded) {
    Value fault = cell.book().reckoning().evaluate(guarded, cell.at());
    String says = "shows " + Shown.of(cell.value()) + " because " + Formula.of(guarded) + " gives "
        + Shown.of(fault) + " and a guard hides it, though every cell it reads is filled in";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
