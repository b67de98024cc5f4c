package squaresheet.formula;

import java.util.List;
import java.util.Optional;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;

/** What stands behind the references of a formula in one cell of a workbook that is worked out. */
final class CellScope implements Scope {

  /** More cells than this are not taken together: the used part of more than thirty columns as long as a sheet. */
  private static final long LARGEST = 1 << 25;

  private final Tabs tabs;
  private final Address here;

  CellScope(Tabs tabs, Address here) {
    this.tabs = tabs;
    this.here = here;
  }

  @Override
  public Value cell(Address cell) {
    return tabs.value(cell);
  }

  @Override
  public Value.Matrix block(String sheet, Block block) {
    Optional<Tabs.Tab> tab = tabs.tab(sheet);
    if (tab.isEmpty()) {
      return Value.Matrix.column(List.of(Signal.REFERENCE.value()));
    }
    if ((long) block.rows() * block.columns() > LARGEST) {
      throw Signal.notChecked(block + " is more cells than are gone through");
    }
    return new Value.Matrix(block.rows(), block.columns(), new BlockValues(tab.get(), block));
  }

  @Override
  public Optional<Block> used(String sheet) {
    return tabs.tab(sheet).flatMap(tab -> tab.sheet().used());
  }

  @Override
  public Optional<Node> defined(Node.Name name) {
    return tabs.defined(name, here.sheet()).or(() -> wholeTable(name));
  }

  /** A table's name alone stands for its rows without headings and totals. */
  private Optional<Node> wholeTable(Node.Name name) {
    return tabs.table(name.name())
        .map(it -> new Node.Table(it.table().name(), List.of(), "", "", name.at()));
  }

  @Override
  public Optional<Node.Reference> table(Node.Table table) {
    Optional<Tabs.NamedTable> meant =
        table.table().isEmpty() ? around() : tabs.table(table.table());
    return meant.flatMap(it -> TablePart.of(it.sheet().name(), it.table(), table, here.ref()));
  }

  /** The table that the formula stands in. */
  private Optional<Tabs.NamedTable> around() {
    return tabs.tab(here.sheet()).map(Tabs.Tab::sheet).flatMap(sheet -> sheet.tables().stream()
        .filter(table -> table.block().contains(here.ref()))
        .findFirst()
        .map(table -> new Tabs.NamedTable(sheet, table)));
  }

  @Override
  public boolean isSubtotal(Address cell) {
    return tabs.tab(cell.sheet())
        .flatMap(tab -> tab.formula(cell.ref()))
        .filter(FormulaCell::isSubtotal)
        .isPresent();
  }

  @Override
  public boolean isFilteredOut(Address cell) {
    return tabs.tab(cell.sheet())
        .map(Tabs.Tab::sheet)
        .filter(sheet -> sheet.isRowHidden(cell.ref().row()))
        .flatMap(Sheet::filter)
        .filter(filter -> cell.ref().row() > filter.first().row()
            && cell.ref().row() <= filter.last().row())
        .isPresent();
  }

  @Override
  public Optional<Address> here() {
    return Optional.of(here);
  }

  @Override
  public DateSystem dates() {
    return tabs.workbook().date1904() ? DateSystem.FROM_1904 : DateSystem.FROM_1900;
  }

  /** Which cells of a table a structured reference stands for. */
  private static final class TablePart {
    private TablePart() {}

    static Optional<Node.Reference> of(
        String sheet, Sheet.Table table, Node.Table asked, Ref here) {
      int first = column(table, asked.firstColumn(), 0);
      int last = column(table, asked.lastColumn(), table.columns().size() - 1);
      int[] rows = rows(table, asked.items(), here);
      if (first < 0 || last < first || rows[1] < rows[0]) {
        return Optional.empty();
      }
      int left = table.block().first().column();
      Node.Corner one = Node.Corner.fixed(new Ref(rows[0], left + first));
      Node.Corner other = Node.Corner.fixed(new Ref(rows[1], left + last));
      Node.Extent extent = one.equals(other) ? Node.Extent.CELL : Node.Extent.BLOCK;
      return Optional.of(new Node.Reference(sheet, one, other, extent, asked.at()));
    }

    private static int column(Sheet.Table table, String name, int otherwise) {
      if (name.isEmpty()) {
        return otherwise;
      }
      for (int i = 0; i < table.columns().size(); i++) {
        if (table.columns().get(i).equalsIgnoreCase(name)) {
          return i;
        }
      }
      return -1;
    }

    private static int[] rows(Sheet.Table table, List<String> items, Ref here) {
      int top = table.block().first().row();
      int bottom = table.block().last().row();
      int firstData = top + table.headingRows();
      int lastData = bottom - table.totalsRows();
      int from = bottom + 1;
      int to = -1;
      for (String item : items.isEmpty() ? List.of("#Data") : items) {
        int[] part =
            switch (item.toLowerCase(java.util.Locale.ROOT)) {
              case "#all" -> new int[] {top, bottom};
              case "#headers" -> new int[] {top, firstData - 1};
              case "#totals" -> new int[] {lastData + 1, bottom};
              case "#this row" -> new int[] {here.row(), here.row()};
              default -> new int[] {firstData, lastData};
            };
        from = Math.min(from, part[0]);
        to = Math.max(to, part[1]);
      }
      return new int[] {from, to};
    }
  }
}
