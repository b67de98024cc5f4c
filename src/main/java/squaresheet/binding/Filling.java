package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import squaresheet.binding.FoundTable.Row;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.job.JobResult;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;

/** Writes a job into the cells of a workbook of any layout. */
final class Filling {

  private final Workbook book;
  private final String file;
  private final List<Guess> bound;
  private final String sheet;
  private final JobResult job;
  private final ModelRows model;
  private final ModelValues values;
  private final Pen pen;

  /**
   * A workbook to be filled.
   *
   * @param sheet the sheet whose tables of planes, edges and openings are filled; empty for all
   */
  Filling(Workbook book, String file, List<Guess> bound, JobResult job, String sheet) {
    this.book = book;
    this.file = file;
    this.bound = bound;
    this.sheet = sheet;
    this.job = job;
    model = new ModelRows(job);
    values = new ModelValues(job);
    pen = new Pen(book);
  }

  /** The same with a sheet of course lines and marks. */
  Filling withLayout() {
    job.layout()
        .ifPresentOrElse(
            layout -> pen.also(AddedLayout.of(book, layout)),
            () -> pen.say(Complaint.NO_CELL.at(
                new Where.InFile(file), "no shingle is chosen, so there is no layout to write")));
    return this;
  }

  Filled fill() {
    List<FoundTable> tables =
        new BoundTables(book, file).of(bound.stream().filter(Guess::isHeading).toList());
    planes(named(of(tables, "planes")), tables);
    of(tables, "edges").forEach(this::edges);
    of(tables, "openings").forEach(this::openings);
    all(tables, "prices").forEach(it -> known(it, "code", values.prices()));
    all(tables, "materials").forEach(it -> known(it, "item", values.materials()));
    bound.stream().filter(guess -> !guess.isHeading()).forEach(this::labelled);
    List<Finding> hindered = pen.findings().stream().filter(Finding::isError).toList();
    return !hindered.isEmpty()
        ? new Filled(List.of(), List.of(), hindered)
        : new Afterwards(book, file, pen).filled();
  }

  private static List<FoundTable> all(List<FoundTable> tables, String name) {
    return tables.stream().filter(table -> table.table().equals(name)).toList();
  }

  private List<FoundTable> of(List<FoundTable> tables, String name) {
    return all(tables, name).stream()
        .filter(table -> sheet.isEmpty() || table.grid().name().equalsIgnoreCase(sheet))
        .toList();
  }

  /** Without lists that name no plane, where others do. */
  private static List<FoundTable> named(List<FoundTable> tables) {
    List<FoundTable> named =
        tables.stream().filter(table -> table.column("plane").isPresent()).toList();
    return named.isEmpty() ? tables : named;
  }

  private void planes(List<FoundTable> tables, List<FoundTable> everywhere) {
    if (tables.isEmpty()) {
      pen.say(Complaint.NO_ROOM.at(
          new Where.InFile(file),
          all(everywhere, "planes").isEmpty()
              ? "a table of planes must be bound to be filled, but none is; see bind"
              : "the sheet '" + sheet
                  + "' must have a table of planes, but has none that is bound"));
      return;
    }
    List<ModelRow> left = model.planes();
    List<TableFill> fills = new ArrayList<>();
    for (FoundTable table : tables) {
      TableFill fill = new TableFill(book, table, row -> table.text(row, "plane"), pen);
      left = fill.fill(left);
      fills.add(fill);
    }
    place(tables, fills, left);
    for (int i = 0; i < tables.size(); i++) {
      strangers(tables.get(i), fills.get(i));
    }
    if (fills.stream().allMatch(it -> it.strangers().isEmpty()) && tables.size() == 1) {
      sums(tables.get(0));
    }
  }

  /** Planes without a row go into the only table there is; of several a person must say which. */
  private void place(List<FoundTable> tables, List<TableFill> fills, List<ModelRow> left) {
    if (!left.isEmpty() && tables.size() > 1) {
      pen.say(Complaint.NO_ROOM.at(
          new Where.InFile(file),
          "the planes " + names(left) + " have no rows, and there are " + tables.size()
              + " tables of planes, on "
              + tables.stream().map(it -> it.grid().name()).collect(Collectors.joining(", "))
              + "; say with --sheet which of them is meant"));
    } else {
      add(tables.get(0), fills.get(0), left);
    }
  }

  private static String names(List<ModelRow> rows) {
    return rows.stream().map(ModelRow::name).collect(Collectors.joining(", "));
  }

  private void add(FoundTable table, TableFill fill, List<ModelRow> left) {
    TableFill.Free free = fill.free(left.size());
    if (free.rows().size() >= left.size()) {
      fill.add(left, free.rows());
    } else {
      pen.say(noRoom(table, left, free));
    }
  }

  /** What to insert where, so that what adds up the rows grows with them. */
  private Finding noRoom(FoundTable table, List<ModelRow> left, TableFill.Free free) {
    int missing = left.size() - free.rows().size();
    List<Integer> items = new ArrayList<>(table.rows(Row.DATA));
    items.addAll(table.rows(Row.PREPARED));
    int before = items.stream().reduce(Math::max).orElse(table.heading() + 1);
    boolean side = table.isOnItsSide();
    String one = side ? "column" : "row";
    String place = side ? Ref.letters(before) : Integer.toString(before + 1);
    return Complaint.NO_ROOM.at(
        table.where(before, "plane"),
        "the planes " + names(left) + " need " + left.size() + " free "
            + (left.size() == 1 ? one : one + "s") + ", but there "
            + (free.rows().size() == 1 ? "is " : "are ") + free.rows().size()
            + (free.reason().isEmpty() ? "" : " (" + free.reason() + ")") + "; insert " + missing
            + " " + (missing == 1 ? one : one + "s")
            + beside(side, items.size() > 1, place + " of " + table.grid().name())
            + ", and fill again; nothing is written");
  }

  /** Between items the sums grow by themselves; over a single one, or under it, they do not. */
  private static String beside(boolean side, boolean between, String place) {
    if (between) {
      return (side ? " left of column " : " above row ") + place
          + ", so that the sums grow with them";
    }
    return (side ? " right of column " : " below row ") + place
        + ", stretch the sums over them where they do not grow";
  }

  private void strangers(FoundTable table, TableFill fill) {
    for (int row : fill.strangers()) {
      pen.say(Complaint.NOT_IN_MODEL.at(
          table.where(row, "plane"),
          "'" + table.text(row, "plane")
              + "' stands on the sheet but is none of the model's planes; it is left as it is and"
              + " still counts in the sums"));
    }
  }

  /** What the sums under the planes should make. */
  private void sums(FoundTable table) {
    List<Integer> totals = table.rows(Row.TOTAL);
    if (totals.isEmpty()) {
      return;
    }
    int row = totals.get(totals.size() - 1);
    for (FoundColumn column : table.columns()) {
      Cell cell = table.grid().cell(row, column.at());
      if (cell.isFormula() && column.property().matches(".*area|squares")) {
        pen.expect(
            table.grid().address(row, column.at()).orElseThrow(),
            "all planes: " + column.property().replace('_', ' '),
            sum(column.property()),
            Spelt.of(column, List.of(), List.of()));
      }
    }
  }

  private Known sum(String property) {
    List<Known.Amount> all = model.planes().stream()
        .map(row -> (Known.Amount) row.values().get(property))
        .toList();
    double least = all.stream().mapToDouble(Known.Amount::plain).sum();
    double or = all.stream()
        .mapToDouble(it -> it.or().isEmpty() ? it.plain() : it.or().get(0))
        .sum();
    return new Known.Amount(least, List.of(or));
  }

  /** A table of kinds of edge, or of single edges where it says on which plane each is. */
  private void edges(FoundTable table) {
    boolean single = table.column("plane").isPresent();
    IntFunction<String> name = row -> single
        ? table.text(row, "plane") + " | " + table.text(row, "edge") + " | "
            + table.text(row, "side")
        : table.text(row, "edge");
    TableFill fill = new TableFill(book, table, name, pen);
    rest(
        table,
        fill,
        fill.fill(
            single
                ? model.edges()
                : unlessRight(table, model.kinds(table.column("count").isPresent()))),
        "edge");
  }

  /** Without the kinds whose length times count is right already. */
  private List<ModelRow> unlessRight(FoundTable table, List<ModelRow> kinds) {
    return kinds.stream().filter(kind -> !isRight(table, kind)).toList();
  }

  private boolean isRight(FoundTable table, ModelRow kind) {
    Known total = kind.values().get("total_length");
    return table.column("total_length").stream().anyMatch(column -> {
      double sum = table.rows(Row.DATA).stream()
          .filter(row -> kind.isOn().test(table.text(row, "edge")))
          .mapToDouble(row -> Cells.number(table.grid().cell(row, column.at())).orElse(0))
          .sum();
      return Spelt.of(column, List.of(), List.of())
          .isSame(total, Cell.EMPTY, sum, Afterwards.TOLERANCE);
    });
  }

  private void openings(FoundTable table) {
    known(table, "opening", model.openings());
  }

  private void known(FoundTable table, String key, List<ModelRow> items) {
    TableFill fill = new TableFill(book, table, row -> table.text(row, key), pen);
    List<ModelRow> left = fill.fill(items);
    if (!table.table().equals("prices")) {
      rest(table, fill, left, table.table().equals("materials") ? "item" : "opening");
    }
  }

  /** Items without a row go into rows prepared for them; where there are too few, all are said. */
  private void rest(FoundTable table, TableFill fill, List<ModelRow> left, String what) {
    TableFill.Free free = fill.free(left.size());
    if (left.isEmpty()) {
      return;
    }
    if (free.rows().size() >= left.size() && fill.isEmpty()) {
      fill.add(left, free.rows());
    } else {
      pen.say(Complaint.NO_CELL.at(
          table.where(table.heading(), what),
          "the model also has the " + what + (left.size() == 1 ? " " : "s ") + names(left)
              + ", which have no rows here; nothing is added"));
    }
  }

  private void labelled(Guess guess) {
    Known known = values.labelled().get(guess.property());
    Optional<Meaning> meaning = Words.find("job", guess.property());
    if (known == null || meaning.isEmpty() || (guess.wantsUnit() && known instanceof Known.Size)) {
      return;
    }
    Cell cell = book.cell(guess.at());
    boolean squares = guess.property().endsWith("squares") && guess.unit().isEmpty();
    Spelt spelt = new Spelt(
        squares ? "squares" : guess.unit(),
        meaning.get().holds(),
        cell.isFormula() || cell.isBlank() ? List.of() : List.of(cell),
        List.of());
    if (cell.isFormula() && !(known instanceof Known.Word)) {
      pen.expect(guess.at(), guess.inWords(), known, spelt);
    } else if (!cell.isFormula() && !spelt.says(known, cell)) {
      pen.put(guess.at(), guess.inWords(), spelt.content(known, cell));
    }
  }
}
