package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;

/** Does a merged block cover a number that formulas still read? */
final class ValueUnderMerge implements Check<Tab> {

  private static final CheckInfo INFO =
      new CheckInfo("value-under-merge", Severity.WARNING, "A value is hidden under merged cells");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Tab tab) {
    return tab.sheet().merged().stream().flatMap(block -> new Cells(tab.name(), block)
        .each()
        .filter(cell -> !cell.ref().equals(block.first()))
        .filter(
            cell -> tab.book().value(cell) instanceof Value.Number number && number.value() != 0)
        .filter(cell -> tab.book().links().isRead(cell))
        .map(cell -> says(tab, cell, block)));
  }

  private static Finding says(Tab tab, Address cell, Block block) {
    String says = "holds " + Shown.of(tab.book().value(cell)) + " under the merged cells " + block
        + ", where nobody sees it, but formulas count it; unmerge them";
    return Says.about(INFO, tab.book(), cell, says);
  }
}
