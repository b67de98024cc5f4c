package squaresheet.binding;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;

/**
 * A table found by its headings.
 *
 * @param table which one, such as {@code planes}
 * @param grid where it stands; turned on its side where its items stand in columns
 * @param heading the last row of headings
 * @param columns what its columns mean, from the left
 * @param first the first column of the table
 * @param last the last column of the table
 * @param rows what each row under the headings is
 * @param sure how sure it is that this is such a table, 0 to 1
 */
record FoundTable(
    String table,
    Grid grid,
    int heading,
    List<FoundColumn> columns,
    int first,
    int last,
    Map<Integer, Row> rows,
    double sure) {

  FoundTable {
    columns = List.copyOf(columns);
    rows = java.util.Collections.unmodifiableMap(new TreeMap<>(rows));
  }

  /** What a row under the headings is. */
  enum Row {
    /** An item. */
    DATA,
    /** Prepared for an item, not filled in. */
    PREPARED,
    /** A title over the items that follow. */
    BAND,
    /** A sum of items. */
    TOTAL,
    /** Words for people. */
    NOTE
  }

  boolean isOnItsSide() {
    return grid instanceof Grid.Turned;
  }

  Optional<FoundColumn> column(String property) {
    return columns.stream().filter(column -> column.property().equals(property)).findFirst();
  }

  /** Whether a cell of the sheet lies in the table, its headings included. */
  boolean covers(int sheetRow, int sheetColumn) {
    int across = isOnItsSide() ? sheetRow : sheetColumn;
    int along = isOnItsSide() ? sheetColumn : sheetRow;
    int end = rows.keySet().stream().reduce(heading, Math::max);
    return along >= heading && along <= end && across >= first && across <= last;
  }

  /** What the column there means; empty where that is not known. */
  String property(int at) {
    return columns.stream()
        .filter(column -> column.at() == at)
        .map(FoundColumn::property)
        .findFirst()
        .orElse("");
  }

  List<Integer> rows(Row kind) {
    return rows.entrySet().stream()
        .filter(entry -> entry.getValue() == kind)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The cell of a property in a row; empty where the table has no such column. */
  Cell cell(int row, String property) {
    return column(property).map(column -> grid.cell(row, column.at())).orElse(Cell.EMPTY);
  }

  String text(int row, String property) {
    return Cells.text(cell(row, property));
  }

  Where where(int row, String property) {
    return column(property)
        .map(column -> grid.where(row, column.at(), column.heading().text()))
        .orElseGet(() -> grid.where(row, first));
  }

  Optional<Address> address(int row, String property) {
    return column(property).flatMap(column -> grid.address(row, column.at()));
  }

  /** The first column that goes with the table: further left than what is understood, as far as headings go. */
  int firstHeaded() {
    int column = first;
    while (column > 0 && !grid.text(heading, column - 1).isEmpty()) {
      column--;
    }
    return column;
  }

  /** The last column that goes with the table, further right as far as headings go. */
  int lastHeaded() {
    int column = last;
    while (!grid.text(heading, column + 1).isEmpty()) {
      column++;
    }
    return column;
  }

  /** The titles over items, by their rows. */
  NavigableMap<Integer, String> bands() {
    NavigableMap<Integer, String> bands = new TreeMap<>();
    rows(Row.BAND).forEach(row -> bands.put(row, firstText(row)));
    return bands;
  }

  private String firstText(int row) {
    for (int column = first; column <= last; column++) {
      if (!grid.text(row, column).isEmpty()) {
        return grid.text(row, column);
      }
    }
    return "";
  }

  FoundTable with(List<FoundColumn> others) {
    return new FoundTable(table, grid, heading, others, first, last, rows, sure);
  }
}
