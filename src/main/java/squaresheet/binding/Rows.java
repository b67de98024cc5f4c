package squaresheet.binding;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import squaresheet.binding.FoundTable.Row;
import squaresheet.binding.Meaning.Role;
import squaresheet.sheet.Cell;

/** Tells the rows under a heading apart: items, prepared rows, bands, totals and notes; and says where the table ends. */
final class Rows {

  private static final Set<String> TOTAL_WORDS =
      Set.of("total", "subtotal", "sum", "summe", "gesamt", "totaux", "suma");

  /** A table may have this many blank rows in a row; more, and it has ended. */
  private static final int BLANKS_INSIDE = 1;

  private final Grid grid;
  private final List<FoundColumn> columns;
  private final int first;
  private final int last;
  private final int stop;

  /**
   * Looks at the rows of a table.
   *
   * @param stop the first row that cannot belong to it, because another table starts
   */
  Rows(Grid grid, List<FoundColumn> columns, int first, int last, int stop) {
    this.grid = grid;
    this.columns = columns;
    this.first = first;
    this.last = last;
    this.stop = Math.min(stop, grid.rows());
  }

  /** What the rows from {@code from} on are, as far as the table goes. */
  Map<Integer, Row> sort(int from) {
    Map<Integer, Row> sorted = new TreeMap<>();
    int blanks = 0;
    boolean totalled = false;
    for (int row = from; row < stop && blanks <= BLANKS_INSIDE; row++) {
      if (grid.isBlank(row, first, last)) {
        blanks++;
      } else {
        Row kind = kind(row);
        if (totalled && !goesOn(row, kind)) {
          break;
        }
        blanks = 0;
        totalled = kind == Row.TOTAL || (totalled && kind == Row.NOTE);
        sorted.put(row, kind);
      }
    }
    return sorted;
  }

  /** Whether the table goes on after a sum: only with an item, or a band over one, or a further sum. */
  private boolean goesOn(int row, Row kind) {
    return switch (kind) {
      case DATA, TOTAL -> true;
      case BAND -> row + 1 < stop && kind(row + 1) == Row.DATA;
      case PREPARED, NOTE -> false;
    };
  }

  private Row kind(int row) {
    if (isTotal(row)) {
      return Row.TOTAL;
    }
    boolean named = columns.stream()
        .anyMatch(column -> column.meaning().role() == Role.KEY && !isBlank(row, column));
    boolean typed = columns.stream().anyMatch(column -> isQuantity(column) && isTyped(row, column));
    boolean computed = columns.stream().anyMatch(column -> cell(row, column).isFormula());
    if (typed || (named && (computed || count(row) > 1))) {
      return named || typedCount(row) > 1 ? Row.DATA : Row.NOTE;
    }
    return computed ? Row.PREPARED : isFollowedByAnItem(row) ? Row.BAND : Row.NOTE;
  }

  private boolean isFollowedByAnItem(int row) {
    for (int next = row + 1; next < stop && next <= row + 2; next++) {
      if (!grid.isBlank(next, first, last)) {
        return typedCount(next) > 0;
      }
    }
    return false;
  }

  private boolean isTotal(int row) {
    boolean says = false;
    for (int column = first; column <= last && !says; column++) {
      says = Tokens.of(grid.text(row, column)).stream().anyMatch(TOTAL_WORDS::contains);
    }
    return says ? typedCount(row) == 0 || isSumRow(row) : isSumRow(row) && isUnnamed(row);
  }

  private boolean isUnnamed(int row) {
    return columns.stream()
        .filter(column -> column.meaning().role() == Role.KEY)
        .allMatch(column -> isBlank(row, column));
  }

  private boolean isSumRow(int row) {
    return columns.stream().anyMatch(column -> isSumOfThoseAbove(row, column));
  }

  private boolean isSumOfThoseAbove(int row, FoundColumn column) {
    String formula = cell(row, column).formula().toUpperCase(java.util.Locale.ROOT);
    return formula.matches("(SUM|SUBTOTAL|AGGREGATE|SUMIFS?)\\(.*");
  }

  private long count(int row) {
    return columns.stream().filter(column -> !isBlank(row, column)).count();
  }

  private long typedCount(int row) {
    return columns.stream()
        .filter(column -> isQuantity(column) && isTyped(row, column))
        .count();
  }

  private static boolean isQuantity(FoundColumn column) {
    return column.meaning().holds().isNumeric() && column.meaning().role() != Role.KEY;
  }

  private boolean isTyped(int row, FoundColumn column) {
    return !cell(row, column).isFormula() && Cells.isLikeANumber(cell(row, column));
  }

  private boolean isBlank(int row, FoundColumn column) {
    return grid.isBlank(row, column.at());
  }

  private Cell cell(int row, FoundColumn column) {
    return grid.cell(row, column.at());
  }
}
