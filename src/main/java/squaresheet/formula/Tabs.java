package squaresheet.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Consumer;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** The sheets of a workbook while it is worked out: typed values and formula cells, quick to find. */
final class Tabs {

  private static final Value BLANK = new Value.Blank();

  /** What stands where a formula is not read yet. */
  private static final Value NOT_YET = new Value.NotChecked("not worked out yet");

  private final Workbook workbook;
  private final Map<String, Tab> exact = new HashMap<>();
  private final Map<String, Tab> tabs = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
  private final Map<String, Optional<Node>> names;
  private final Map<String, NamedTable> tables;
  private final Effort effort;
  /** For all that is worked out over these sheets, taken together. */
  private final Effort over;

  /** A structured table and its sheet. */
  record NamedTable(Sheet sheet, Sheet.Table table) {}

  Tabs(Workbook workbook) {
    this.workbook = workbook;
    this.names = new HashMap<>();
    this.effort = new Effort();
    this.over = new Effort();
    this.tables = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    workbook.sheets().forEach(sheet -> {
      tabs.putIfAbsent(sheet.name(), new Tab(sheet));
      sheet
          .tables()
          .forEach(table -> tables.putIfAbsent(table.name(), new NamedTable(sheet, table)));
    });
    exact.putAll(tabs);
  }

  private Tabs(Tabs before) {
    workbook = before.workbook;
    effort = before.over;
    over = before.over;
    names = before.names;
    tables = before.tables;
    before.tabs.forEach((name, tab) -> tabs.put(name, new Tab(tab)));
    exact.putAll(tabs);
  }

  /** The same sheets, in which some cells may be put to other values; these are left as they are. */
  Tabs over() {
    return new Tabs(this);
  }

  /** One sheet. */
  final class Tab {
    private final Sheet sheet;
    private final List<FormulaCell> formulas;
    /** The array formulas that fill more than their own cell. */
    private final List<Block> arrays;

    private CellColumn[] columns;
    /** What stands here instead of what stands in the columns. */
    private final Map<Long, Object> instead = new HashMap<>();

    private final IdentityHashMap<FormulaCell, FormulaCell> renewed = new IdentityHashMap<>();
    private final Touched touched = new Touched();

    Tab(Sheet sheet) {
      this.sheet = sheet;
      this.formulas = new ArrayList<>();
      this.arrays = sheet.arrays().stream()
          .filter(block -> !block.first().equals(block.last()))
          .toList();
      this.columns = new CellColumn[16];
      sheet.cells().forEach(this::add);
    }

    Tab(Tab before) {
      sheet = before.sheet;
      formulas = before.formulas;
      arrays = before.arrays;
      columns = before.columns;
    }

    private void add(Sheet.Placed placed) {
      boolean formula = placed.cell().isFormula();
      if (formula || (!placed.cell().isBlank() && !isFilled(placed.ref()))) {
        made(placed.ref().column())
            .add(placed.ref().row(), formula ? NOT_YET : Value.of(placed.cell().stored()));
      }
    }

    /** Whether an array formula in another cell fills this one. */
    private boolean isFilled(Ref ref) {
      return !arrays.isEmpty()
          && sheet
              .arrayAt(ref)
              .filter(block -> sheet.cell(block.first()).isFormula())
              .isPresent();
    }

    private CellColumn made(int column) {
      if (column >= columns.length) {
        columns = Arrays.copyOf(columns, Math.max(column + 1, columns.length * 2));
      }
      if (columns[column] == null) {
        columns[column] = new CellColumn();
      }
      return columns[column];
    }

    private CellColumn column(int column) {
      return column < columns.length ? columns[column] : null;
    }

    static Value valueOf(Object cell) {
      return cell instanceof FormulaCell formula ? formula.value() : (Value) cell;
    }

    private static long key(int row, int column) {
      return (long) row << 14 | column;
    }

    private Object there(int row, int column) {
      Object put = instead.isEmpty() ? null : instead.get(key(row, column));
      if (put != null) {
        return put;
      }
      CellColumn cells = column(column);
      int place = cells == null ? -1 : cells.find(row);
      return place < 0 ? null : cells.cell(place);
    }

    /** The value of a cell, counted as one look. */
    Value look(int row, int column) {
      effort.spend();
      return value(row, column);
    }

    void spend() {
      effort.spend();
    }

    Value value(int row, int column) {
      Object found = there(row, column);
      if (found instanceof FormulaCell cell) {
        return value(cell, row, column);
      }
      return found != null ? (Value) found : spread(row, column);
    }

    private Value value(FormulaCell cell, int row, int column) {
      Ref first = cell.at().ref();
      FormulaCell now = renewed.isEmpty() ? cell : renewed.getOrDefault(cell, cell);
      boolean own = first.row() == row && first.column() == column;
      return own ? now.value() : now.element(row - first.row(), column - first.column());
    }

    /** What an array formula fills a cell with that its file has nothing of. */
    private Value spread(int row, int column) {
      return arrays.isEmpty()
          ? BLANK
          : sheet
              .arrayAt(new Ref(row, column))
              .map(it -> spread(it, row, column))
              .orElse(BLANK);
    }

    private Value spread(Block block, int row, int column) {
      Object first = there(block.first().row(), block.first().column());
      if (first instanceof FormulaCell cell) {
        return value(cell, row, column);
      }
      return first instanceof Value.NotChecked unreadable ? unreadable : BLANK;
    }

    Sheet sheet() {
      return sheet;
    }

    List<FormulaCell> formulas() {
      return formulas;
    }

    Optional<FormulaCell> formula(Ref ref) {
      return there(ref.row(), ref.column()) instanceof FormulaCell cell
          ? Optional.of(cell)
          : Optional.empty();
    }

    private void set(Ref ref, Object cell) {
      CellColumn cells = made(ref.column());
      int place = cells.find(ref.row());
      if (place >= 0) {
        cells.set(place, cell);
      }
    }

    /** Puts a cell to another value, here and not in the sheets this was made over. */
    void put(Ref ref, Value value) {
      instead.put(key(ref.row(), ref.column()), value);
      touched.add(ref);
    }

    boolean isPut(Ref ref) {
      return instead.get(key(ref.row(), ref.column())) instanceof Value;
    }

    /** A cell to be worked out anew here, in place of the one in the sheets this was made over. */
    FormulaCell renew(FormulaCell cell) {
      FormulaCell fresh = cell.copy();
      renewed.put(cell, fresh);
      cell.array().ifPresentOrElse(touched::add, () -> touched.add(cell.at().ref()));
      return fresh;
    }

    boolean isTouched(Block block) {
      return touched.in(block);
    }

    private boolean isPlain(Block block) {
      return !touched.in(block) && arrays.stream().noneMatch(array -> Touched.meet(array, block));
    }

    /** Shows the values of the first column of a block that are not blank; false where that takes going through it. */
    boolean eachFilled(Block block, Consumer<Value> visitor) {
      if (!isPlain(block)) {
        return false;
      }
      CellColumn cells = column(block.first().column());
      int size = cells == null ? 0 : cells.size();
      for (int at = size == 0 ? 0 : cells.from(block.first().row());
          at < size && cells.row(at) <= block.last().row();
          at++) {
        effort.spend();
        visitor.accept(valueOf(cells.cell(at)));
      }
      return true;
    }

    /** The sum of the first column of a block; none where cells hold something else here than in the column. */
    OptionalDouble sum(Block block) {
      CellColumn cells = column(block.first().column());
      if (cells == null || !isPlain(block)) {
        return OptionalDouble.empty();
      }
      int last = block.last().row();
      RunningSum sum = cells.sum(block.first().row(), last);
      for (int at = sum.place(); at < cells.size() && cells.row(at) <= last; at++) {
        effort.spend();
        sum.add(cells.row(at), Coercion.sound(Grid.known(valueOf(cells.cell(at)))));
      }
      return OptionalDouble.of(sum.total());
    }

    boolean isIndexed(Block block) {
      return column(block.first().column()) != null && isPlain(block);
    }

    ColumnIndex index(int column) {
      return columns[column].index();
    }

    private void worked(FormulaCell cell) {
      Ref ref = cell.at().ref();
      columns[ref.column()].worked(ref.row(), cell.value());
    }

    private void forget() {
      for (CellColumn column : columns) {
        if (column != null) {
          column.forget();
        }
      }
    }
  }

  /** The sheet of that name, capital and small letters alike. */
  Optional<Tab> tab(String name) {
    return Optional.ofNullable(named(name));
  }

  private Tab named(String name) {
    Tab found = exact.get(name);
    return found != null ? found : tabs.get(name);
  }

  /** This workbook's sheet in place of the one it was made over. */
  Tab same(Tab other) {
    return exact.get(other.sheet().name());
  }

  /** Lets the index of a cell's column know that it is worked out. */
  void worked(FormulaCell cell) {
    named(cell.at().sheet()).worked(cell);
  }

  /** The structured table of that name, capital and small letters alike. */
  Optional<NamedTable> table(String name) {
    return Optional.ofNullable(tables.get(name));
  }

  void put(Address cell, Value value) {
    tabs.get(cell.sheet()).set(cell.ref(), value);
  }

  FormulaCell put(Address cell, Formula formula, Optional<Block> array) {
    FormulaCell made = new FormulaCell(cell, formula, array);
    Tab tab = tabs.get(cell.sheet());
    tab.set(cell.ref(), made);
    tab.formulas.add(made);
    return made;
  }

  /** Lets the array formula in the block's first cell answer for another cell of it; false where that holds none. */
  boolean cover(Address cell, Block block) {
    Tab tab = tabs.get(cell.sheet());
    Optional<FormulaCell> first = tab.formula(block.first())
        .filter(it -> it.array().equals(Optional.of(block)) && !cell.ref().equals(block.first()));
    first.ifPresent(it -> tab.set(cell.ref(), it));
    return first.isPresent();
  }

  Value value(Address cell) {
    Tab tab = named(cell.sheet());
    return tab == null
        ? Signal.REFERENCE.value()
        : tab.value(cell.ref().row(), cell.ref().column());
  }

  /** Begins to count anew how many cells are looked at; whether the limit was reached. */
  boolean rest() {
    boolean spent = effort.isSpent();
    effort.again();
    return spent;
  }

  /** Forgets where values stand. */
  void forget() {
    tabs.values().forEach(Tab::forget);
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
