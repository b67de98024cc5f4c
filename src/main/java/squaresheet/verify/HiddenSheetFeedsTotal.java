package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;

/** Does a hidden sheet add typed numbers to sums that people see? */
final class HiddenSheetFeedsTotal implements Check<Tab> {

  private static final CheckInfo INFO = new CheckInfo(
      "hidden-sheet-feeds-total", Severity.WARNING, "A hidden sheet adds to a visible total");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Tab tab) {
    return tab.isHidden()
        ? tab.sheet()
            .cells()
            .filter(placed -> tab.isTypedNumber(placed.ref()))
            .map(placed -> tab.at(placed.ref()))
            .filter(cell -> isAdded(tab, cell))
            .limit(1)
            .map(cell -> says(tab, cell))
        : Stream.empty();
  }

  /** Whether a visible formula adds the cell as a term; tables and lists that are looked up are no terms. */
  private static boolean isAdded(Tab tab, Address cell) {
    Book book = tab.book();
    return book.links().readers(cell).stream()
        .filter(reader -> !book.tab(reader.sheet()).isHidden())
        .map(reader -> new FormulaCell(book, reader, book.formula(reader).orElseThrow()))
        .anyMatch(reader -> isTerm(reader, cell));
  }

  private static boolean isTerm(FormulaCell reader, Address cell) {
    List<Node> terms = Nodes.terms(reader.tree());
    Stream<Node> added = terms.size() > 1
        ? terms.stream()
        : reader.calls("SUM").flatMap(call -> call.arguments().stream());
    return added
        .flatMap(term -> reader.cells(term).stream())
        .anyMatch(cells -> cells.contains(cell));
  }

  private static Finding says(Tab tab, Address cell) {
    String says =
        "holds " + Shown.of(tab.book().value(cell)) + " on the hidden sheet '" + tab.name()
            + "', which a visible sum adds; show the sheet, or bring the amount where people see it";
    return Says.about(INFO, tab.book(), cell, says);
  }
}
