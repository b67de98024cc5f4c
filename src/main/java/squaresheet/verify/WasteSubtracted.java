package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;

/** Is a waste rate taken off the need? */
final class WasteSubtracted implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("waste-subtracted", Severity.WARNING, "Waste is taken off instead of added");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return Nodes.all(cell.tree(), Node.Binary.class)
        .filter(node -> node.operator() == Node.Operator.TIMES)
        .flatMap(node -> Stream.of(node.left(), node.right()))
        .filter(side -> WasteRate.isOneAnd(cell, side, Node.Operator.MINUS))
        .filter(side -> RunStart.is(cell))
        .limit(1)
        .map(side -> says(cell, side));
  }

  private static Finding says(FormulaCell cell, Node side) {
    double now = cell.book().number(cell.at()).orElse(0);
    double less =
        Shown.number(cell.book().reckoning().evaluate(side, cell.at())).orElse(1);
    double should = now / less * (2 - less);
    String says =
        "is " + cell.shown() + ", which takes the waste off and comes to less than the net amount;"
            + " with the waste added it makes " + Shown.number(should);
    return Says.about(INFO, cell.book(), cell.at(), new Value.Number(should), says);
  }
}
