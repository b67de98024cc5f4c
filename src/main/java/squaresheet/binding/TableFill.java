package squaresheet.binding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import squaresheet.binding.FoundTable.Row;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Workbook;

/** Writes items of the model into the rows of a table: those that have a row into it, the others into free rows. */
final class TableFill {

  private final Workbook book;
  private final FoundTable table;
  private final IntFunction<String> name;
  private final Pen pen;
  private final Map<FoundColumn, Spelt> spelt = new HashMap<>();
  private final Map<Integer, List<ModelRow>> own = new LinkedHashMap<>();

  /** A table, and what the name of an item in a row of it is. */
  TableFill(Workbook book, FoundTable table, IntFunction<String> name, Pen pen) {
    this.book = book;
    this.table = table;
    this.name = name;
    this.pen = pen;
    Choices choices = new Choices(book, table);
    table
        .columns()
        .forEach(column -> spelt.put(column, Spelt.of(column, typed(column), choices.of(column))));
  }

  private List<Cell> typed(FoundColumn column) {
    return table.rows(Row.DATA).stream()
        .map(row -> table.grid().cell(row, column.at()))
        .filter(cell -> !cell.isFormula() && !cell.isBlank())
        .toList();
  }

  /** The items that have no row yet, after those that have one are written into theirs. */
  List<ModelRow> fill(List<ModelRow> items) {
    Set<ModelRow> placed = new HashSet<>();
    for (int row : named(items)) {
      List<ModelRow> here =
          items.stream().filter(item -> item.isOn().test(name.apply(row))).toList();
      own.put(row, here);
      placed.addAll(here);
    }
    items.forEach(this::fill);
    return items.stream().filter(item -> !placed.contains(item)).toList();
  }

  /** The rows of items, and in a form those that so far have nothing but the name of one. */
  private List<Integer> named(List<ModelRow> items) {
    List<Integer> rows = new ArrayList<>(table.rows(Row.DATA));
    if (!table.table().equals("planes")) {
      table.rows().entrySet().stream()
          .filter(it -> it.getValue() == Row.NOTE || it.getValue() == Row.BAND)
          .map(Map.Entry::getKey)
          .filter(row -> items.stream().anyMatch(item -> item.isOn().test(name.apply(row))))
          .forEach(rows::add);
    }
    return rows;
  }

  /** Whether it has no row of any item yet. */
  boolean isEmpty() {
    return own.isEmpty();
  }

  private void fill(ModelRow item) {
    List<Integer> rows = own.entrySet().stream()
        .filter(entry -> entry.getValue().contains(item))
        .map(Map.Entry::getKey)
        .toList();
    boolean sure = rows.size() == 1 && own.get(rows.get(0)).size() == 1;
    if (sure) {
      write(rows.get(0), item, item.values(), Map.of());
    } else if (!rows.isEmpty()) {
      pen.say(Complaint.NO_CELL.at(
          table.where(rows.get(0), key()),
          "'" + item.name() + "' must have one row of its own, but " + rows.size()
              + (rows.size() == 1 ? " row speaks of it and of others" : " rows speak of it")
              + "; they are left as they are"));
    }
  }

  /** The rows of items that the model does not know. */
  List<Integer> strangers() {
    return own.entrySet().stream()
        .filter(entry -> entry.getValue().isEmpty())
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Writes items into rows that are free. */
  void add(List<ModelRow> items, List<Integer> rows) {
    Template template = new Template(table);
    for (int i = 0; i < items.size(); i++) {
      Map<String, Known> values = new HashMap<>(items.get(i).ifNew());
      values.putAll(items.get(i).values());
      Map<Integer, String> formulas = template.formulas(rows.get(i), items.get(i));
      write(rows.get(i), items.get(i), values, formulas);
      carry(rows.get(i), items.get(i), formulas, template);
    }
    sayLeftOut(items, rows);
  }

  /** Where every item has something that is added up and the new ones get nothing, the sum leaves them out. */
  private void sayLeftOut(List<ModelRow> items, List<Integer> rows) {
    TakenIn sums = new TakenIn(book, table);
    Set<Address> written = pen.written();
    for (int column = table.firstHeaded(); column <= table.lastHeaded(); column++) {
      int at = column;
      List<String> without = IntStream.range(0, items.size())
          .filter(i -> table.grid().isBlank(rows.get(i), at)
              && !written.contains(address(rows.get(i), at))
              && !isNothing(items.get(i), at))
          .mapToObj(i -> items.get(i).name())
          .toList();
      boolean others =
          table.rows(Row.DATA).stream().noneMatch(row -> table.grid().isBlank(row, at));
      if (!without.isEmpty() && others) {
        sums.adding(rows.get(0), at).ifPresent(sum -> sayLeftOut(rows.get(0), at, sum, without));
      }
    }
  }

  /** Whether the model says that there is none of it, so that the cell is rightly empty. */
  private boolean isNothing(ModelRow item, int at) {
    return table.columns().stream()
        .filter(column -> column.at() == at)
        .anyMatch(column ->
            item.values().get(column.property()) instanceof Known.Amount it && it.plain() == 0);
  }

  private void sayLeftOut(int row, int at, String sum, List<String> without) {
    String heading = table.grid().text(table.heading(), at);
    pen.say(Complaint.NO_CELL.at(
        table.grid().where(row, at),
        "'" + heading + "' is added up in " + sum + ", but has neither a formula nor a value for "
            + String.join(", ", without)
            + ", so the sum leaves " + (without.size() == 1 ? "it" : "them")
            + " out; write a formula into the column, or bind it, and fill again"));
  }

  private void carry(int row, ModelRow item, Map<Integer, String> formulas, Template template) {
    formulas.forEach((at, formula) -> pen.formula(address(row, at), item(item, at), formula));
    template.like(row, item).ifPresent(from -> template
        .looks(row, from)
        .forEach(at -> pen.look(address(row, at), address(from, at))));
  }

  private void write(
      int row, ModelRow item, Map<String, Known> values, Map<Integer, String> formulas) {
    for (FoundColumn column : table.columns()) {
      Known known = values.get(column.property());
      if (known != null) {
        write(row, item, column, known, formulas.containsKey(column.at()));
      }
    }
  }

  private void write(int row, ModelRow item, FoundColumn column, Known known, boolean isCarried) {
    Cell cell = table.grid().cell(row, column.at());
    Address at = address(row, column.at());
    String what = item.name() + ": " + column.property().replace('_', ' ');
    if (cell.isFormula() || isCarried) {
      if (!(known instanceof Known.Word)) {
        pen.expect(at, what, known, spelt.get(column));
      }
    } else if (isWanted(row, item, column, known, cell)) {
      pen.put(at, what, spelt.get(column).content(known, cell));
    }
  }

  private boolean isWanted(int row, ModelRow item, FoundColumn column, Known known, Cell cell) {
    boolean key = column.property().equals(key()) && own.containsKey(row);
    boolean needless = cell.isBlank()
        && column.property().equals("top")
        && !item.kind().equals("trapezoid")
        && !new Template(table).isAskedFor(row, item, column);
    boolean zero = cell.isBlank() && known instanceof Known.Amount it && it.plain() == 0;
    return !key && !needless && !zero && !spelt.get(column).says(known, cell);
  }

  /** Rows free for so many items, as far as there are, and why no more are. */
  Free free(int count) {
    TakenIn sums = new TakenIn(book, table);
    List<Integer> chosen = new ArrayList<>();
    String reason = "";
    for (int row : candidates(count)) {
      Optional<String> misses = sums.leavingOut(row, before(row, chosen));
      if (misses.isPresent()) {
        reason = reason.isEmpty() ? misses.get() + " would leave it out" : reason;
      } else if (chosen.size() < count) {
        chosen.add(row);
      }
    }
    return new Free(chosen, reason);
  }

  /**
   * Rows that are free.
   *
   * @param rows from the top
   * @param reason why a further row cannot be used; empty where there is none
   */
  record Free(List<Integer> rows, String reason) {}

  private Optional<Integer> before(int row, List<Integer> chosen) {
    List<Integer> used = new ArrayList<>(table.rows(Row.DATA));
    used.addAll(chosen);
    return used.stream().filter(it -> it < row).reduce(Math::max);
  }

  /** Prepared rows, and behind the last row those where nothing stands and nothing follows at once. */
  private List<Integer> candidates(int count) {
    List<Integer> rows = new ArrayList<>(table.rows(Row.PREPARED));
    if (table.rows(Row.TOTAL).isEmpty()) {
      int row = table.rows().keySet().stream().reduce(table.heading(), Math::max) + 1;
      while (rows.size() < count && isEmpty(row) && isEmpty(row + 1)) {
        rows.add(row++);
      }
    }
    return rows;
  }

  private boolean isEmpty(int row) {
    return table.grid().isBlank(row, table.first(), table.last());
  }

  private String item(ModelRow item, int at) {
    return item.name() + ": "
        + table.columns().stream()
            .filter(column -> column.at() == at)
            .map(column -> column.property().replace('_', ' '))
            .findFirst()
            .orElseGet(() -> table.grid().text(table.heading(), at));
  }

  private Address address(int row, int at) {
    return table.grid().address(row, at).orElseThrow();
  }

  private String key() {
    return table.columns().stream()
        .filter(column -> column.meaning().role() == Meaning.Role.KEY)
        .map(FoundColumn::property)
        .findFirst()
        .orElse("");
  }
}
