package squaresheet.verify;

import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** Does a lookup end before its table does? */
final class LookupTableShort implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "lookup-table-short", Severity.WARNING, "A lookup leaves out the end of its table");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return cell.calls("VLOOKUP", "LOOKUP", "XLOOKUP", "MATCH", "INDEX")
        .filter(call -> call.arguments().size() > 1)
        .flatMap(call ->
            cell.cells(call.arguments().get(call.function().equals("INDEX") ? 0 : 1)).stream())
        .filter(table -> table.block().rows() > 2)
        .flatMap(table -> below(cell, table).stream())
        .filter(finding -> isFirst(cell))
        .limit(1);
  }

  private static boolean isFirst(FormulaCell cell) {
    return cell.tab()
        .tableAt(cell.at().ref())
        .map(table -> table.axis().along(cell.at().ref()) == table.first())
        .orElse(true);
  }

  /** The row right below, where its key and values are of the same sort as those of the last row, and go on. */
  private static Optional<Finding> below(FormulaCell cell, Cells table) {
    Block block = table.block();
    Address next =
        new Address(table.sheet(), new Ref(block.last().row() + 1, block.first().column()));
    Address last =
        new Address(table.sheet(), new Ref(block.last().row(), block.first().column()));
    Address before =
        new Address(table.sheet(), new Ref(block.last().row() - 1, block.first().column()));
    boolean sort = cell.book().value(next) instanceof Value.Number c
        && cell.book().value(last) instanceof Value.Number b
        && cell.book().value(before) instanceof Value.Number a
        && Math.signum(c.value() - b.value()) == Math.signum(b.value() - a.value())
        && c.value() != b.value();
    boolean values = block.columns() < 2
        || cell.book().value(new Address(next.sheet(), next.ref().plus(0, 1)))
            instanceof Value.Number;
    return sort && values ? Optional.of(says(cell, table, next)) : Optional.empty();
  }

  private static Finding says(FormulaCell cell, Cells table, Address next) {
    String says = "looks in " + table + ", but the table goes on at " + next + " with "
        + Shown.of(cell.book().value(next)) + "; widen the block to the whole table";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
