package squaresheet.binding;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.finding.Read;
import squaresheet.formula.DateSystem;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Scope;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** The cells of a workbook, every formula worked out anew; what was stored beside a formula is never looked at. */
final class BookValues {

  /** Formulas lean on each other this deep at most before the rest counts as not followed. */
  private static final int DEEPEST = 600;

  private final Workbook book;
  private final Map<String, Sheet> sheets = new HashMap<>();
  private final Map<Address, Value> known = new HashMap<>();
  private final Set<Address> asked = new HashSet<>();
  private final Map<String, Optional<Node>> names = new HashMap<>();

  BookValues(Workbook book) {
    this.book = book;
    book.sheets().forEach(sheet -> sheets.put(key(sheet.name()), sheet));
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  boolean isFormula(Address at) {
    return book.cell(at).isFormula();
  }

  /** What stands in a cell: typed, or worked out. */
  Value value(Address at) {
    Address canonical = new Address(key(at.sheet()), at.ref());
    Value before = known.get(canonical);
    if (before != null) {
      return before;
    }
    Sheet sheet = sheets.get(canonical.sheet());
    Cell cell = sheet == null ? Cell.EMPTY : sheet.cell(at.ref());
    if (!cell.isFormula()) {
      return Value.of(cell.stored());
    }
    if (!asked.add(canonical)) {
      return new Value.NotChecked("a circle of formulas through " + at);
    }
    if (asked.size() - known.size() > DEEPEST) {
      asked.remove(canonical);
      return new Value.NotChecked("formulas lean on each other too deep at " + at);
    }
    Value value = formula(cell.formula())
        .map(formula -> formula.evaluate(new At(at)))
        .orElseGet(() -> new Value.NotChecked("the formula of " + at + " cannot be read"));
    known.put(canonical, value);
    return value;
  }

  private static Optional<Formula> formula(String text) {
    Read<Formula> read = Formula.parse(text);
    return read.value();
  }

  /** The cell as it should be: with the value worked out anew in place of the stored one. */
  Cell cell(Address at) {
    Cell cell = book.cell(at);
    return cell.isFormula() ? new Cell(value(at).content(), cell.formula(), cell.format()) : cell;
  }

  private Optional<Node> defined(Node.Name name, String sheet) {
    return names.computeIfAbsent(
        key(sheet) + "!" + key(name.name()),
        unknown ->
            book.name(name.name(), sheet).flatMap(it -> formula(it.text())).map(Formula::tree));
  }

  /** What stands behind references and names for the formula of a cell. */
  private final class At implements Scope {
    private final Address here;

    At(Address here) {
      this.here = here;
    }

    @Override
    public Value cell(Address cell) {
      return value(cell.sheet().isEmpty() ? new Address(here.sheet(), cell.ref()) : cell);
    }

    @Override
    public Optional<Block> used(String sheet) {
      Sheet asked = sheets.get(key(sheet.isEmpty() ? here.sheet() : sheet));
      return asked == null ? Optional.empty() : asked.used();
    }

    @Override
    public Optional<Node> defined(Node.Name name) {
      return BookValues.this.defined(name, name.sheet().isEmpty() ? here.sheet() : name.sheet());
    }

    @Override
    public Optional<Address> here() {
      return Optional.of(here);
    }

    @Override
    public DateSystem dates() {
      return book.date1904() ? DateSystem.FROM_1904 : DateSystem.FROM_1900;
    }
  }
}
