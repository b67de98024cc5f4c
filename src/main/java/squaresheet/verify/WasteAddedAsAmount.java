package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;

/** Is a waste rate added to an amount instead of multiplied with it? */
final class WasteAddedAsAmount implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "waste-added-as-amount", Severity.WARNING, "A waste rate is added like an amount");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return Nodes.all(cell.tree(), Node.Binary.class)
        .filter(node -> node.operator() == Node.Operator.PLUS)
        .filter(node -> WasteRate.is(cell, node.right()) && isAmount(cell, node.left()))
        .filter(node -> RunStart.is(cell))
        .limit(1)
        .map(node -> says(cell, node));
  }

  private static boolean isAmount(FormulaCell cell, Node left) {
    double amount =
        Shown.number(cell.book().reckoning().evaluate(left, cell.at())).orElse(0);
    return !(left instanceof Node.Number) && amount > 1.5 && !WasteRate.is(cell, left);
  }

  private static Finding says(FormulaCell cell, Node.Binary sum) {
    double amount =
        Shown.number(cell.book().reckoning().evaluate(sum.left(), cell.at())).orElse(0);
    double rate =
        Shown.number(cell.book().reckoning().evaluate(sum.right(), cell.at())).orElse(0);
    String says = "is " + cell.shown() + ", which adds the rate " + Shown.number(rate)
        + " to the amount " + Shown.number(amount)
        + "; with brackets, times (1 + rate), that part makes " + Shown.number(amount * (1 + rate));
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
