package squaresheet.verify;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.formula.DateSystem;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Scope;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;

/** The values of a workbook's cells, worked out anew from what is typed; stored results of formulas are never used. */
final class Reckoning {

  private static final Value CIRCULAR = new Value.NotChecked("the formula comes to itself again");
  private static final Value NONE = new Value.Blank();

  private final Book book;
  private final Map<Address, Value> values;
  /** What array formulas come to, by the first cells of their blocks. */
  private final Map<Address, Value> spread;

  private Reckoning(Book book, Map<Address, Value> values, Map<Address, Value> spread) {
    this.book = book;
    this.values = values;
    this.spread = spread;
  }

  /** Works out every formula of the workbook. */
  static Reckoning of(Book book) {
    Reckoning all = new Reckoning(book, new HashMap<>(), new HashMap<>());
    book.links().order().forEach(all::work);
    return all;
  }

  /** The values as they would be if these cells held something else. */
  Reckoning putting(Map<Address, Value> other) {
    Reckoning changed = new Reckoning(book, new HashMap<>(values), new HashMap<>(spread));
    changed.values.putAll(other);
    Set<Address> behind = book.links().dependents(other.keySet());
    book.links().order().stream()
        .filter(cell -> behind.contains(cell) && !other.containsKey(cell))
        .forEach(changed::work);
    return changed;
  }

  private void work(Address cell) {
    if (book.links().circular().contains(cell)) {
      values.put(cell, CIRCULAR);
      return;
    }
    Optional<Block> array =
        book.workbook().sheet(cell.sheet()).flatMap(sheet -> sheet.arrayAt(cell.ref()));
    if (array.isPresent()) {
      spread(cell, array.get());
    } else {
      Formula formula = book.formula(cell).orElseThrow();
      values.put(cell, unfiltered(formula, cell).evaluate(formula, cell));
    }
  }

  /** The values a formula sees: a SUBTOTAL sees nothing in rows that a filter hides. */
  private Reckoning unfiltered(Formula formula, Address cell) {
    List<Address> hidden = FilteredRows.under(new FormulaCell(book, cell, formula));
    if (hidden.isEmpty()) {
      return this;
    }
    Reckoning seen = new Reckoning(book, new HashMap<>(values), spread);
    hidden.forEach(address -> seen.values.put(address, NONE));
    return seen;
  }

  private void spread(Address cell, Block block) {
    Value value = book.formula(cell).orElseThrow().evaluateArray(new CellScope(cell));
    spread.put(new Address(cell.sheet(), block.first()), value);
    values.put(cell, element(value, block, cell.ref()));
  }

  /** What an array formula that was worked out spreads into a cell of its block; never written out cell by cell. */
  private Optional<Value> spread(Address cell) {
    return spread.isEmpty()
        ? Optional.empty()
        : book.workbook()
            .sheet(cell.sheet())
            .flatMap(sheet -> sheet.arrayAt(cell.ref()))
            .flatMap(
                block -> Optional.ofNullable(spread.get(new Address(cell.sheet(), block.first())))
                    .map(value -> element(value, block, cell.ref())));
  }

  private static Value element(Value value, Block block, Ref at) {
    if (!(value instanceof Value.Matrix matrix)) {
      return value;
    }
    int row = at.row() - block.first().row();
    int column = at.column() - block.first().column();
    int down = matrix.rows() == 1 ? 0 : row;
    int right = matrix.columns() == 1 ? 0 : column;
    return down < matrix.rows() && right < matrix.columns()
        ? matrix.at(down, right)
        : new Value.Fault("#N/A");
  }

  /** What the formula would come to in this cell. */
  Value evaluate(Formula formula, Address cell) {
    return formula.evaluate(new CellScope(cell));
  }

  /** What the part of a formula in this cell comes to. */
  Value evaluate(Node part, Address cell) {
    return evaluate(Formula.of(part), cell);
  }

  /** The value of a cell, blank where there is nothing. */
  Value value(Address cell) {
    Value known = values.get(cell);
    if (known != null) {
      return known;
    }
    return spread(cell).orElseGet(() -> typed(cell));
  }

  private Value typed(Address cell) {
    Cell there = book.cell(cell);
    return there.isFormula()
        ? new Value.NotChecked("the formula at " + cell + " cannot be read")
        : there.isBlank() ? NONE : Value.of(there.stored());
  }

  /** What stands behind the references of a formula in that cell. */
  Scope scope(Address cell) {
    return new CellScope(cell);
  }

  /** What stands behind the references of a formula in one cell. */
  private final class CellScope implements Scope {
    private final Address here;

    CellScope(Address here) {
      this.here = here;
    }

    @Override
    public Value cell(Address cell) {
      String tab = book.references().tab(cell.sheet(), here);
      return book.workbook().sheet(tab).isEmpty()
          ? new Value.Fault("#REF!")
          : value(new Address(tab, cell.ref()));
    }

    @Override
    public Optional<Block> used(String sheet) {
      return book.workbook().sheet(sheet).flatMap(Sheet::used);
    }

    @Override
    public Optional<Node> defined(Node.Name name) {
      return book.references().defined(name, here);
    }

    @Override
    public Optional<Node.Reference> table(Node.Table table) {
      return book.references().table(table, here);
    }

    @Override
    public Optional<Address> here() {
      return Optional.of(here);
    }

    @Override
    public DateSystem dates() {
      return book.workbook().date1904() ? DateSystem.FROM_1904 : DateSystem.FROM_1900;
    }
  }
}
