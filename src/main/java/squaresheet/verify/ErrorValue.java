package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;

/** Is a formula the first of its chain to give an error? */
final class ErrorValue implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("error-value", Severity.ERROR, "A formula gives an error");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    boolean wanted = Nodes.any(cell.tree(), node -> Nodes.isCall(node, "NA"));
    boolean own = cell.value() instanceof Value.Fault
        && !wanted
        && !Nodes.any(cell.tree(), node -> node instanceof Node.Fault);
    boolean root = own
        && cell.reads().stream()
            .flatMap(Cells::each)
            .noneMatch(read -> cell.book().value(read) instanceof Value.Fault);
    return root ? Stream.of(says(cell)) : Stream.empty();
  }

  private static Finding says(FormulaCell cell) {
    int behind = cell.book().links().dependents(List.of(cell.at())).size();
    String says = "is " + cell.shown() + " and gives " + Shown.of(cell.value()) + ": "
        + why(((Value.Fault) cell.value()).code())
        + (behind == 0 ? "" : "; " + Says.count(behind, "formula") + " behind it fails too");
    return Says.about(INFO, cell.book(), cell.at(), says);
  }

  private static String why(String code) {
    return switch (code) {
      case "#DIV/0!" -> "it divides by an empty cell or by 0";
      case "#N/A" -> "what it looks up is not in the table";
      case "#NAME?" -> "it is written with a name or a function that is not there";
      case "#VALUE!" -> "it computes with a text";
      case "#REF!" -> "it points to cells that are not there";
      case "#NUM!" -> "no number can be the result";
      default -> "it cannot be worked out";
    };
  }
}
