package squaresheet.binding;

import squaresheet.binding.FoundTable.Row;

/** Holds a column's cells against what its heading says they are. */
final class Agreement {

  /** Below this share of fitting cells the heading is not believed. */
  private static final double HALF = 0.5;

  private Agreement() {}

  static FoundTable weigh(FoundTable table) {
    return table.with(
        table.columns().stream().map(column -> weigh(table, column)).toList());
  }

  private static FoundColumn weigh(FoundTable table, FoundColumn column) {
    var filled = table.rows(Row.DATA).stream()
        .map(row -> table.grid().cell(row, column.at()))
        .filter(cell -> !cell.isBlank())
        .toList();
    if (filled.isEmpty() || !column.meaning().holds().isNumeric()) {
      return column;
    }
    double share = filled.stream().filter(Cells::isLikeANumber).count() / (double) filled.size();
    return share < HALF ? column.with(column.sure() * share, "most cells are no numbers") : column;
  }
}
