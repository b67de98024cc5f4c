package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;

/** Does a formula hold a {@code #REF!} in the open? */
final class BrokenReference implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "broken-reference", Severity.ERROR, "A formula points to cells that were deleted");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    boolean broken = Nodes.any(cell.tree(), BrokenReference::isBroken);
    boolean guarded =
        cell.calls("IFERROR", "IFNA", "ISERROR", "ISERR").findAny().isPresent();
    return broken && !guarded ? Stream.of(says(cell)) : Stream.empty();
  }

  static boolean isBroken(Node node) {
    return node instanceof Node.Fault fault && fault.code().equals("#REF!");
  }

  private static Finding says(FormulaCell cell) {
    int behind = cell.book().links().dependents(List.of(cell.at())).size();
    String says =
        "is " + cell.shown() + ": the cells it pointed to were deleted; point it to the right ones"
            + (behind == 0
                ? ""
                : "; " + Says.count(behind, "formula") + " behind it cannot be worked out");
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
