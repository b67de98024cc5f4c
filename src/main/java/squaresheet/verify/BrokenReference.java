package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;

/** Does a formula hold a {@code #REF!}, or name a sheet that is not there, in the open? */
final class BrokenReference implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "broken-reference", Severity.ERROR, "A formula points to cells that are not there");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return isIn(cell.book(), cell.tree())
            && ErrorHiddenByGuard.guarded(cell).findAny().isEmpty()
        ? Stream.of(says(cell))
        : Stream.empty();
  }

  /** Whether it holds a reference to cells that are not there. */
  static boolean isIn(Book book, Node tree) {
    return Nodes.any(
        tree,
        node -> (node instanceof Node.Fault fault && fault.code().equals("#REF!"))
            || (node instanceof Node.Reference reference
                && lost(book, reference).isPresent()));
  }

  /** The sheet that a reference names, where the workbook has none of that name. */
  private static Optional<String> lost(Book book, Node.Reference reference) {
    return Optional.of(reference.sheet())
        .filter(sheet -> !sheet.isEmpty() && book.workbook().sheet(sheet).isEmpty());
  }

  private static Finding says(FormulaCell cell) {
    int behind = cell.book().links().dependents(List.of(cell.at())).size();
    String what = Nodes.all(cell.tree(), Node.Reference.class)
        .flatMap(reference -> lost(cell.book(), reference).stream())
        .findFirst()
        .map(sheet -> "there is no sheet '" + sheet + "'; point it to the right cells")
        .orElse("the cells it pointed to were deleted; point it to the right ones");
    String says = "is " + cell.shown() + ": " + what
        + (behind == 0
            ? ""
            : "; " + Says.count(behind, "formula") + " behind it cannot be worked out");
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
