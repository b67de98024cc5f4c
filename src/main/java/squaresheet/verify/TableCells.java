package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import squaresheet.formula.Node;
import squaresheet.formula.Node.Corner;
import squaresheet.formula.Node.Extent;
import squaresheet.formula.Node.Span;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;

/**
 * The cells that structured references into one table stand for.
 *
 * @param sheet the sheet's name
 * @param table the table
 */
record TableCells(String sheet, Sheet.Table table) {

  Optional<Node.Reference> of(Node.Table node, Address here) {
    int left = column(node.firstColumn(), 0);
    int right = column(node.lastColumn(), table.columns().size() - 1);
    int[] rows = rows(node.items(), here);
    if (left < 0 || right < left || rows[1] < rows[0]) {
      return Optional.empty();
    }
    int first = table.block().first().column();
    Corner from = Corner.fixed(new Ref(rows[0], first + left));
    Corner to = Corner.fixed(new Ref(rows[1], first + right));
    Extent extent = from.equals(to) ? Extent.CELL : Extent.BLOCK;
    return Optional.of(new Node.Reference(sheet, from, to, extent, Span.NONE));
  }

  private int column(String name, int otherwise) {
    return name.isEmpty()
        ? otherwise
        : IntStream.range(0, table.columns().size())
            .filter(at -> table.columns().get(at).equalsIgnoreCase(name))
            .findFirst()
            .orElse(-1);
  }

  private int[] rows(List<String> items, Address here) {
    int top = table.block().first().row();
    int bottom = table.block().last().row();
    int firstData = top + table.headingRows();
    int lastData = bottom - table.totalsRows();
    if (items.contains("#This Row")) {
      return new int[] {here.ref().row(), here.ref().row()};
    }
    boolean all = items.contains("#All");
    boolean headers = items.contains("#Headers");
    boolean totals = items.contains("#Totals");
    boolean data = items.isEmpty() || items.contains("#Data");
    int first = all || headers ? top : data ? firstData : lastData + 1;
    int last = all || totals ? bottom : data ? lastData : firstData - 1;
    return new int[] {first, last};
  }
}
