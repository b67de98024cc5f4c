package squaresheet.formula;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import squaresheet.sheet.Block;

/** The formulas of a workbook by where they stand, while they are put in order. */
final class OrderIndex {

  private static final OrderSheet EMPTY = new OrderSheet();

  private final IdentityHashMap<Tabs.Tab, OrderSheet> sheets = new IdentityHashMap<>();
  private final OrderSheet[] sheetOf;
  private final FormulaCell[] cells;

  /** The formulas of one sheet: those that fill several cells are few and kept apart. */
  private static final class OrderSheet {
    private final NavigableMap<Integer, OrderColumn> columns = new TreeMap<>();
    private final Map<Integer, Spread> spreads = new HashMap<>();
  }

  private static final class Spread {
    private final int node;
    private final Block block;
    private boolean fresh = true;
    private int opened = OrderColumn.NEVER;

    Spread(int node, Block block) {
      this.node = node;
      this.block = block;
    }
  }

  OrderIndex(Tabs tabs, List<FormulaCell> all) {
    cells = all.toArray(FormulaCell[]::new);
    sheetOf = new OrderSheet[cells.length];
    IdentityHashMap<OrderSheet, NavigableMap<Integer, TreeMap<Integer, Integer>>> places =
        new IdentityHashMap<>();
    for (int node = 0; node < cells.length; node++) {
      Tabs.Tab tab = tabs.tab(cells[node].at().sheet()).orElseThrow();
      OrderSheet sheet = sheets.computeIfAbsent(tab, key -> new OrderSheet());
      sheetOf[node] = sheet;
      int number = node;
      cells[node]
          .array()
          .filter(block -> !block.first().equals(block.last()))
          .ifPresentOrElse(
              block -> sheet.spreads.put(number, new Spread(number, block)), () -> places
                  .computeIfAbsent(sheet, key -> new TreeMap<>())
                  .computeIfAbsent(cells[number].at().ref().column(), key -> new TreeMap<>())
                  .put(cells[number].at().ref().row(), number));
    }
    places.forEach((sheet, columns) -> columns.forEach((at, rows) -> sheet.columns.put(
        at, new OrderColumn(new ArrayList<>(rows.keySet()), new ArrayList<>(rows.values())))));
  }

  private static Iterable<OrderColumn> columns(OrderSheet sheet, Block block) {
    int first = block.first().column();
    int last = block.last().column();
    if (first == last) {
      OrderColumn one = sheet.columns.get(first);
      return one == null ? List.of() : List.of(one);
    }
    return sheet.columns.subMap(first, true, last, true).values();
  }

  /** A formula among these cells that is not come to yet; negative where there is none. */
  int fresh(FormulaCell.Reading reading) {
    OrderSheet sheet = sheets.getOrDefault(reading.tab(), EMPTY);
    Block block = reading.block();
    for (OrderColumn column : columns(sheet, block)) {
      int fresh = column.fresh(block.first().row(), block.last().row());
      if (fresh >= 0) {
        return fresh;
      }
    }
    return sheet.spreads.values().stream()
        .filter(spread -> spread.fresh && Touched.meet(spread.block, block))
        .mapToInt(spread -> spread.node)
        .findFirst()
        .orElse(-1);
  }

  /** How early the earliest open formula among these cells was come to. */
  int earliest(FormulaCell.Reading reading) {
    OrderSheet sheet = sheets.getOrDefault(reading.tab(), EMPTY);
    Block block = reading.block();
    int earliest = OrderColumn.NEVER;
    for (OrderColumn column : columns(sheet, block)) {
      earliest =
          Math.min(earliest, column.earliest(block.first().row(), block.last().row()));
    }
    for (Spread spread : sheet.spreads.values()) {
      if (Touched.meet(spread.block, block)) {
        earliest = Math.min(earliest, spread.opened);
      }
    }
    return earliest;
  }

  void open(int node, int turn) {
    Spread spread = sheetOf[node].spreads.get(node);
    if (spread != null) {
      spread.fresh = false;
      spread.opened = turn;
    } else {
      OrderColumn column = column(node);
      column.open(column.place(cells[node].at().ref().row()), turn);
    }
  }

  void close(int node) {
    Spread spread = sheetOf[node].spreads.get(node);
    if (spread != null) {
      spread.opened = OrderColumn.NEVER;
    } else {
      OrderColumn column = column(node);
      column.close(column.place(cells[node].at().ref().row()));
    }
  }

  private OrderColumn column(int node) {
    return sheetOf[node].columns.get(cells[node].at().ref().column());
  }
}
