package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** Which cells a formula needs to be worked out before it, as blocks; never cell by cell. */
final class Needs {

  private static final int NAMES_DEEP = 32;

  /** Functions that ask where cells are and not what is in them. */
  private static final Set<String> PLACES = Set.of("ROW", "COLUMN", "ROWS", "COLUMNS");

  /** Functions whose cells to add take the size of the cells asked. */
  private static final Set<String> SIZED = Set.of("SUMIF", "AVERAGEIF");

  private final Tabs tabs;
  private final Address here;
  private final CellScope scope;
  private final List<FormulaCell.Reading> all = new ArrayList<>();

  private Needs(Tabs tabs, Address here) {
    this.tabs = tabs;
    this.here = here;
    this.scope = new CellScope(tabs, here);
  }

  static List<FormulaCell.Reading> of(Tabs tabs, FormulaCell cell) {
    Needs needs = new Needs(tabs, cell.at());
    needs.collect(cell.formula().tree(), 0);
    return needs.all;
  }

  private void collect(Node node, int deep) {
    if (node instanceof Node.Call call && PLACES.contains(call.function())) {
      return;
    }
    if (node instanceof Node.Reference reference) {
      add(sheet(reference), reference.block());
    } else if (node instanceof Node.Table table) {
      scope.table(table).ifPresent(it -> add(sheet(it), it.block()));
    } else if (node instanceof Node.Name name && deep < NAMES_DEEP) {
      scope.defined(name).ifPresent(it -> collect(it, deep + 1));
    } else if (node instanceof Node.Binary binary
        && binary.operator() == Node.Operator.RANGE
        && binary.left() instanceof Node.Reference left) {
      addAround(left, binary.right());
    } else if (node instanceof Node.Call call && SIZED.contains(call.function())) {
      addSized(call);
    }
    node.parts().forEach(part -> collect(part, deep));
  }

  /** A range that ends where a function says, as {@code C1:INDEX(C1:C6,3)}, needs no more than all that is spelled in it. */
  private void addAround(Node.Reference left, Node right) {
    Trees.walk(right, node -> {
      if (node instanceof Node.Reference end) {
        Block block = left.block();
        Block other = end.block();
        Ref first = new Ref(
            Math.min(block.first().row(), other.first().row()),
            Math.min(block.first().column(), other.first().column()));
        Ref last = new Ref(
            Math.max(block.last().row(), other.last().row()),
            Math.max(block.last().column(), other.last().column()));
        add(sheet(left), new Block(first, last));
      }
    });
  }

  private void addSized(Node.Call call) {
    if (call.arguments().size() == 3
        && call.arguments().get(0) instanceof Node.Reference asked
        && call.arguments().get(2) instanceof Node.Reference added) {
      Block shape = asked.block();
      Ref first = added.block().first();
      Ref last = new Ref(
          Math.min(first.row() + shape.rows(), References.ROWS) - 1,
          Math.min(first.column() + shape.columns(), References.COLUMNS) - 1);
      add(sheet(added), new Block(first, last));
    }
  }

  private String sheet(Node.Reference reference) {
    return reference.sheet().isEmpty() ? here.sheet() : reference.sheet();
  }

  private void add(String sheet, Block block) {
    tabs.tab(sheet).ifPresent(tab -> all.add(new FormulaCell.Reading(tab, block)));
  }
}
