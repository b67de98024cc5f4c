package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.binding.FieldCells.Line;
import squaresheet.binding.FoundTable.Row;
import squaresheet.binding.Meaning.Role;
import squaresheet.finding.Finding;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Where;
import squaresheet.job.Unread;

/**
 * What is left of a field sheet when its tables and labels are read. Rows with readings could not be read; everything else is
 * a remark, which is kept and told.
 */
final class FieldRest {

  private static final String OUTSIDE =
      "a row must stand under the headings of a table, without two blank rows between, but stands outside"
          + " every table; nothing of it is read";
  private static final String UNKNOWN =
      "readings must stand under headings that are known, but nothing is read of these; two tables beside each other"
          + " need an empty column between them";
  private static final String ONLY_NAMED =
      "a row must hold readings, but only its name is written; if it is a title, say that it is left out";

  /** Headings stand in one row, or in up to two more over it. */
  private static final int HEADING_ROWS = 2;
  /** A name has this many words at most; more are a remark. */
  private static final int LONGEST_NAME = 4;
  /** A row with so many cells holds readings, rather than a label and what stands beside it. */
  private static final int READINGS = 3;

  private static final int LONGEST_LABEL = 60;

  private final FieldCells cells;
  private final FieldWords words;
  private final List<FieldNotes.Remark> remarks = new ArrayList<>();
  private final List<Unread> unread = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  FieldRest(FieldCells cells, FieldWords words) {
    this.cells = cells;
    this.words = words;
  }

  /** Takes the cells of an item of a table that were read, and keeps the others as remarks. */
  void item(RowReader row) {
    FoundTable table = row.table();
    Set<String> used = row.used();
    if (used.isEmpty() && row.isWhole()) {
      line(table, row.row(), !row.findings().isEmpty());
    }
    List<Integer> unused = left(table, row.row()).stream()
        .filter(column -> !used.contains(table.property(column)))
        .filter(column -> !isDash(table, row, column))
        .toList();
    left(table, row.row()).forEach(column -> cells.take(table.grid(), row.row(), column));
    List<Integer> unknown =
        unused.stream().filter(column -> table.property(column).isEmpty()).toList();
    if (row.isWhole() && isLikeReadings(table.grid(), row.row(), unknown)) {
      readings(table.grid(), row.row(), unused, UNKNOWN);
    } else if (row.isWhole()) {
      unused.forEach(column -> remark(table, row.row(), column, row.subject()));
    }
  }

  private static boolean isDash(FoundTable table, RowReader row, int column) {
    return RowReader.isDash(Cells.text(table.grid().cell(row.row(), column)));
  }

  private void remark(FoundTable table, int row, int column, String subject) {
    String heading = table.grid().text(table.heading(), column);
    FieldNotes.Remark remark = new FieldNotes.Remark(
        table.grid().where(row, column, heading),
        heading.isEmpty() ? subject : subject + ", " + heading,
        Cells.text(table.grid().cell(row, column)));
    remarks.add(remark);
    Optional<Role> role = table.columns().stream()
        .filter(it -> it.at() == column)
        .map(it -> it.meaning().role())
        .findFirst();
    if (role.isPresent() && role.get() != Role.NOTE) {
      findings.add(Complaint.WORDS_LEFT.at(
          remark.where(),
          "nothing is read of '" + heading + "' for this " + RowReader.kind(table)
              + "; kept as a remark: '" + remark.text() + "'"));
    }
  }

  /** Takes the headings of a table whose items are read; tells of columns that nothing is read of. */
  void table(FoundTable table) {
    table.columns().forEach(column -> {
      for (int up = 0; up <= HEADING_ROWS; up++) {
        int row = table.heading() - up;
        boolean own = up == 0 || column.isSure();
        if (row >= 0
            && own
            && column.heading().text().contains(table.grid().spreadText(row, column.at()))) {
          cells.take(table.grid(), row, column.at());
        }
      }
    });
    rows(table);
    Map<Integer, List<String>> unknown = new LinkedHashMap<>();
    for (int column = table.first(); column <= table.last(); column++) {
      if (cells.isLeft(table.grid(), table.heading(), column)) {
        unknown.put(column, List.of());
      }
    }
    unknown.keySet().forEach(column -> unknown(table, column));
  }

  private void unknown(FoundTable table, int column) {
    String heading = Cells.text(table.grid().cell(table.heading(), column));
    List<String> under = table.rows(Row.DATA).stream()
        .map(row -> Cells.text(table.grid().cell(row, column)))
        .filter(text -> !text.isEmpty())
        .toList();
    cells.take(table.grid(), table.heading(), column);
    if (under.isEmpty()) {
      remarks.add(new FieldNotes.Remark(
          table.grid().where(table.heading(), column), "heading of an empty column", heading));
    }
    List<String> known = Words.of(table.table()).stream()
        .filter(meaning -> meaning.role() == Role.KEY || meaning.role() == Role.INPUT)
        .map(meaning -> String.join(" ", meaning.words().get(0).tokens()))
        .toList();
    findings.add(Complaint.WORDS_LEFT.at(
        table.grid().where(table.heading(), column),
        "nothing is read of the column '" + heading + "' of the " + table.table()
            + Neighbours.sentence(heading, known) + "; what stands in it is kept as remarks"
            + (under.isEmpty() ? "" : ": '" + String.join("', '", under) + "'")));
  }

  /** Rows of a table that are no items. */
  private void rows(FoundTable table) {
    table.rows().forEach((row, kind) -> {
      if (kind != Row.DATA && !isBlank(table, row)) {
        if (kind != Row.TOTAL && kind != Row.PREPARED && isLikeAnItem(table, row)) {
          item(table, row);
        } else {
          line(table, row, false);
        }
      }
    });
  }

  private boolean isBlank(FoundTable table, int row) {
    return left(table, row).isEmpty();
  }

  private List<Integer> left(FoundTable table, int row) {
    List<Integer> columns = new ArrayList<>();
    for (int column = table.first(); column <= table.last(); column++) {
      if (cells.isLeft(table.grid(), row, column)) {
        columns.add(column);
      }
    }
    return columns;
  }

  private static boolean isLikeAnItem(FoundTable table, int row) {
    boolean named = table.columns().stream()
        .filter(column -> column.meaning().role() == Role.KEY)
        .map(column -> table.grid().text(row, column.at()))
        .anyMatch(name -> !name.isEmpty() && Tokens.of(name).size() <= LONGEST_NAME);
    boolean measured = table.columns().stream()
        .filter(column -> column.meaning().role() == Role.INPUT)
        .filter(column -> column.meaning().holds().isNumeric())
        .anyMatch(column -> Cells.isLikeANumber(table.grid().cell(row, column.at())));
    return measured || (named && !table.table().equals("edges"));
  }

  private void item(FoundTable table, int row) {
    List<String> written = written(table, row);
    left(table, row).forEach(column -> cells.take(table.grid(), row, column));
    findings.add(Complaint.ROW_UNREAD.at(
        table.grid().where(row, table.first()),
        String.join(" | ", written),
        "",
        ONLY_NAMED + ": '" + String.join(" | ", written) + "'"));
    unread.add(Unread.of(
        table.grid().where(row, table.first()),
        RowReader.kind(table),
        RowReader.name(table, row),
        written,
        "nothing",
        ONLY_NAMED));
  }

  private List<String> written(FoundTable table, int row) {
    return left(table, row).stream()
        .map(column -> Cells.text(table.grid().cell(row, column)))
        .toList();
  }

  private void line(FoundTable table, int row, boolean isTold) {
    List<String> written = written(table, row);
    left(table, row).forEach(column -> cells.take(table.grid(), row, column));
    FieldNotes.Remark remark = new FieldNotes.Remark(
        table.grid().where(row, table.first()),
        "a row of the " + table.table() + " that is no item",
        String.join(" | ", written));
    if (isTold) {
      remarks.add(remark);
    } else {
      keep(remark);
    }
  }

  /** Keeps what stands there as a remark, and says so. */
  void keep(Where where, String about, String text) {
    keep(new FieldNotes.Remark(where, about, text));
  }

  private void keep(FieldNotes.Remark remark) {
    remarks.add(remark);
    findings.add(Complaint.WORDS_LEFT.at(
        remark.where(), remark.about() + " is kept as a remark: '" + remark.text() + "'"));
  }

  /** What stands outside the tables of a grid and behind no label. */
  void outside(Grid grid, List<FoundTable> tables) {
    int first = tables.stream()
        .filter(table -> !table.isOnItsSide())
        .mapToInt(FoundTable::heading)
        .min()
        .orElse(Integer.MAX_VALUE);
    for (Line line : cells.lines(grid)) {
      if (line.row() > first && isLikeReadings(grid, line.row(), line.columns())) {
        readings(grid, line.row(), line.columns(), OUTSIDE);
      } else {
        words(line);
      }
      line.columns().forEach(column -> cells.take(grid, line.row(), column));
    }
  }

  private static boolean isLikeReadings(Grid grid, int row, List<Integer> columns) {
    return columns.size() >= READINGS
        && columns.stream().anyMatch(column -> Cells.isLikeANumber(grid.cell(row, column)));
  }

  private void readings(Grid grid, int row, List<Integer> columns, String why) {
    List<String> written =
        columns.stream().map(column -> Cells.text(grid.cell(row, column))).toList();
    String all = String.join(" | ", written);
    Where where = grid.where(row, columns.get(0));
    findings.add(Complaint.ROW_UNREAD.at(where, all, "", why + ": '" + all + "'"));
    unread.add(Unread.of(where, Unread.Kind.ROW, written.get(0), written, "nothing", why));
  }

  private void words(Line line) {
    String label = line.grid().text(line.row(), line.first());
    boolean labelled =
        line.columns().size() > 1 && !label.isEmpty() && label.length() <= LONGEST_LABEL;
    if (!labelled) {
      keep(new FieldNotes.Remark(
          line.grid().where(line.row(), line.first()),
          "a text outside the tables",
          String.join(" | ", line.written())));
      return;
    }
    String text = String.join(" | ", line.written().subList(1, line.columns().size()));
    remarks.add(new FieldNotes.Remark(line.grid().where(line.row(), line.first()), label, text));
    findings.add(Complaint.WORDS_LEFT.at(
        line.grid().where(line.row(), line.first()),
        "'" + label + "' is no label of a field sheet"
            + Neighbours.sentence(label, words.near(label)) + "; kept as a remark: '" + text
            + "'"));
  }

  List<FieldNotes.Remark> remarks() {
    return remarks;
  }

  List<Unread> unread() {
    return unread;
  }

  List<Finding> findings() {
    return findings;
  }
}
