package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;

/** Is an angle in degrees given to a function that takes radians? */
final class TrigonometryOnDegrees implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "trigonometry-on-degrees", Severity.WARNING, "A sine or cosine is taken of degrees");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return cell.calls("COS", "SIN", "TAN")
        .map(call -> call.arguments().get(0))
        .filter(angle -> !Nodes.any(
            angle, node -> Nodes.isCall(node, "RADIANS", "PI", "ATAN", "ATAN2", "ASIN", "ACOS")))
        .filter(angle ->
            Shown.number(cell.book().reckoning().evaluate(angle, cell.at())).orElse(0)
                > 2 * Math.PI)
        .limit(1)
        .filter(angle -> isFirst(cell))
        .map(angle -> says(cell, angle));
  }

  /** Of a run, only the first formula speaks. */
  private static boolean isFirst(FormulaCell cell) {
    return cell.tab()
        .tableAt(cell.at().ref())
        .map(table -> table.axis().along(cell.at().ref()) == table.first())
        .orElse(true);
  }

  private static Finding says(FormulaCell cell, Node angle) {
    String says = "is " + cell.shown() + " and takes " + Formula.of(angle) + " = "
        + Shown.of(cell.book().reckoning().evaluate(angle, cell.at()))
        + " as radians; an angle in degrees must stand inside RADIANS(…)";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
