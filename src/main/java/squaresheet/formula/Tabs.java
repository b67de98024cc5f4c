package squaresheet.formula;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** The sheets of a workbook while it is worked out: typed values and formula cells, quick to find. */
final class Tabs {

  private static final Value BLANK = new Value.Blank();

  private final Workbook workbook;
  private final Map<String, Tab> tabs = new HashMap<>();
  private final Map<String, Optional<Node>> names = new HashMap<>();

  Tabs(Workbook workbook) {
    this.workbook = workbook;
    workbook.sheets().forEach(sheet -> tabs.put(sheet.name(), new Tab(sheet)));
  }

  /** One sheet. */
  static final class Tab {
    private final Map<Long, Object> cells = new HashMap<>();
    private final List<FormulaCell> formulas = new ArrayList<>();
    private final Sheet sheet;

    Tab(Sheet sheet) {
      this.sheet = sheet;
      sheet
          .cells()
          .filter(placed -> !placed.cell().isFormula() && !placed.cell().isBlank())
          .forEach(placed -> cells.put(key(placed.ref()), Value.of(placed.cell().stored())));
    }

    static long key(Ref ref) {
      return key(ref.row(), ref.column());
    }

    static long key(int row, int column) {
      return (long) row << 14 | column;
    }

    Value value(int row, int column) {
      Object found = cells.get(key(row, column));
      if (found instanceof FormulaCell cell) {
        Ref first = cell.at().ref();
        boolean own = first.row() == row && first.column() == column;
        return own ? cell.value() : cell.element(row - first.row(), column - first.column());
      }
      return found == null ? BLANK : (Value) found;
    }

    Sheet sheet() {
      return sheet;
    }

    List<FormulaCell> formulas() {
      return formulas;
    }

    Optional<FormulaCell> formula(Ref ref) {
      return cells.get(key(ref)) instanceof FormulaCell cell ? Optional.of(cell) : Optional.empty();
    }
  }

  /** The sheet of that name, capital and small letters alike. */
  Optional<Tab> tab(String name) {
    Tab exact = tabs.get(name);
    return exact != null
        ? Optional.of(exact)
        : workbook.sheet(name).map(sheet -> tabs.get(sheet.name()));
  }

  void put(Address cell, Value value) {
    tab(cell.sheet()).ifPresent(tab -> tab.cells.put(Tab.key(cell.ref()), value));
  }

  FormulaCell put(Address cell, Formula formula, Optional<Block> array) {
    FormulaCell made = new FormulaCell(cell, formula, array);
    Tab tab = tabs.get(cell.sheet());
    tab.cells.put(Tab.key(cell.ref()), made);
    tab.formulas.add(made);
    return made;
  }

  /** Lets the array formula in the block's first cell answer for another cell of it; false where that holds none. */
  boolean cover(Address cell, Block block) {
    Tab tab = tabs.get(cell.sheet());
    Optional<FormulaCell> first = tab.formula(block.first())
        .filter(it -> it.array().equals(Optional.of(block)) && !cell.ref().equals(block.first()));
    first.ifPresent(it -> tab.cells.put(Tab.key(cell.ref()), it));
    return first.isPresent();
  }

  Value value(Address cell) {
    Tab tab = tabs.get(cell.sheet());
    if (tab != null) {
      return tab.value(cell.ref().row(), cell.ref().column());
    }
    return tab(cell.sheet())
        .map(it -> it.value(cell.ref().row(), cell.ref().column()))
        .orElseGet(Signal.REFERENCE::value);
  }

  Workbook workbook() {
    return workbook;
  }

  /** What a defined name stands for, on the sheet of the formula or in the whole workbook. */
  Optional<Node> defined(Node.Name name, String sheet) {
    String asked = name.sheet().isEmpty() ? sheet : name.sheet();
    String key = asked + "!" + name.name().toLowerCase(Locale.ROOT);
    return names.computeIfAbsent(
        key, it -> workbook.name(name.name(), asked).map(found -> Formula.parse(found.text())
            .value()
            .map(Formula::tree)
            .orElse(
                new Node.Unsupported(name.name(), "a name that cannot be read", Node.Span.NONE))));
  }
}
