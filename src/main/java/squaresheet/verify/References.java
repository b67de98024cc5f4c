package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.formula.Calculation;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;

/** Finds the cells behind the references, names and tables of a workbook's formulas. */
final class References {

  private static final int NAMES_DEEP = 16;

  private final Calculation calculation;

  References(Calculation calculation) {
    this.calculation = calculation;
  }

  /** The sheet's name as its tab spells it. */
  String tab(String sheet, Address here) {
    return sheet.isEmpty()
        ? here.sheet()
        : calculation.workbook().sheet(sheet).map(Sheet::name).orElse(sheet);
  }

  /** The cells a formula in this place reads. */
  List<Cells> read(Node tree, Address here) {
    List<Cells> all = new ArrayList<>();
    gather(tree, here, all, 0);
    return all;
  }

  private void gather(Node node, Address here, List<Cells> all, int deep) {
    if (node instanceof Node.Reference reference) {
      cells(reference, here).ifPresent(all::add);
    } else if (node instanceof Node.Name name && deep < NAMES_DEEP) {
      defined(name, here).ifPresent(tree -> gather(tree, here, all, deep + 1));
    } else if (node instanceof Node.Table table) {
      table(table, here).flatMap(it -> cells(it, here)).ifPresent(all::add);
    }
    node.parts().forEach(part -> gather(part, here, all, deep));
  }

  /** The cells of a reference, whole columns and rows read no further than their sheet is used. */
  Optional<Cells> cells(Node.Reference reference, Address here) {
    String tab = tab(reference.sheet(), here);
    Block block = reference.block();
    if (reference.extent() == Node.Extent.CELL || reference.extent() == Node.Extent.BLOCK) {
      return Optional.of(new Cells(tab, block));
    }
    return calculation
        .workbook()
        .sheet(tab)
        .flatMap(Sheet::used)
        .flatMap(used -> shared(block, used))
        .map(shared -> new Cells(tab, shared));
  }

  private static Optional<Block> shared(Block one, Block other) {
    int top = Math.max(one.first().row(), other.first().row());
    int left = Math.max(one.first().column(), other.first().column());
    int bottom = Math.min(one.last().row(), other.last().row());
    int right = Math.min(one.last().column(), other.last().column());
    return top <= bottom && left <= right
        ? Optional.of(new Block(new Ref(top, left), new Ref(bottom, right)))
        : Optional.empty();
  }

  /** What a name stands for on the sheet of the formula, read as a formula. */
  Optional<Node> defined(Node.Name name, Address here) {
    return calculation.scope(here).defined(name);
  }

  /** The cells a structured reference stands for. */
  Optional<Node.Reference> table(Node.Table node, Address here) {
    return calculation.scope(here).table(node);
  }
}
