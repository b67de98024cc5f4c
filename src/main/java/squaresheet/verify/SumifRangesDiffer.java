package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.sheet.Block;

/** Do the blocks of a conditional sum start and end in the same rows? */
final class SumifRangesDiffer implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "sumif-ranges-differ", Severity.ERROR, "The blocks of a SUMIF do not lie side by side");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return cell.calls("SUMIF", "AVERAGEIF", "SUMIFS", "AVERAGEIFS", "MAXIFS", "MINIFS", "COUNTIFS")
        .flatMap(call -> uneven(cell, call))
        .limit(1);
  }

  private static Stream<Finding> uneven(FormulaCell cell, Node.Call call) {
    List<Cells> blocks = blocks(cell, call);
    if (blocks.size() < 2) {
      return Stream.empty();
    }
    Block model = blocks.get(0).block();
    return blocks.stream()
        .skip(1)
        .filter(each -> !isBeside(model, each.block(), blocks.get(0).sheet().equals(each.sheet())))
        .limit(1)
        .map(each -> says(cell, blocks.get(0), each));
  }

  /** The blocks that must go together: the keys and what is added, every other argument. */
  private static List<Cells> blocks(FormulaCell cell, Node.Call call) {
    boolean first = call.function().endsWith("IFS") && !call.function().equals("COUNTIFS");
    List<Cells> all = new ArrayList<>();
    for (int i = 0; i < call.arguments().size(); i++) {
      boolean range =
          call.function().endsWith("IFS") ? first ? i == 0 || i % 2 == 1 : i % 2 == 0 : i != 1;
      if (range) {
        cell.cells(call.arguments().get(i)).ifPresent(all::add);
      }
    }
    return all;
  }

  /** Of the same size, and in the same rows or columns where they stand on one sheet. */
  private static boolean isBeside(Block one, Block other, boolean oneSheet) {
    boolean size = one.rows() == other.rows() && one.columns() == other.columns();
    boolean rows = one.first().row() == other.first().row();
    boolean columns = one.first().column() == other.first().column();
    return size && (!oneSheet || rows || columns);
  }

  private static Finding says(FormulaCell cell, Cells keys, Cells added) {
    String says = "is " + cell.shown() + ": the keys stand in " + keys.block()
        + ", but what is added in " + added.block()
        + ", so that rows are paired wrongly; both must begin and end in the same rows";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
