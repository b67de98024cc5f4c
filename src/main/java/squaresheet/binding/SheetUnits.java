package squaresheet.binding;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import squaresheet.sheet.Address;
import squaresheet.units.Unit;

/** The units of cells that stand in no found table: by the label beside them, the heading above, or their number format. */
final class SheetUnits {

  private static final int DEEPEST = 20_000;
  private static final int WIDEST = 200;
  private static final int LABEL_AWAY = 2;
  private static final Pattern TOTAL =
      Pattern.compile("^\\s*(sub-?)?(total|sum)\\b", Pattern.CASE_INSENSITIVE);

  private final Grid grid;
  private final List<FoundTable> tables;
  private final int rows;
  private final int columns;
  private final Map<String, Optional<Unit>> known = new HashMap<>();
  private final Map<Integer, Long> numbers = new HashMap<>();

  SheetUnits(Grid grid, List<FoundTable> tables) {
    this.grid = grid;
    this.tables = tables;
    rows = Math.min(grid.rows(), DEEPEST);
    columns = Math.min(grid.columns(), WIDEST);
  }

  void into(Map<Address, Unit> written) {
    for (int row = 0; row < rows; row++) {
      if (isHeading(row)) {
        under(row, written);
      }
    }
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        if (isNumber(row, column)) {
          put(row, column, beside(row, column), written);
        }
      }
    }
  }

  /** The unit a text writes; every text is read once, however often it stands on the sheet. */
  private Optional<Unit> headed(String text) {
    return known.computeIfAbsent(text, WrittenUnit::of);
  }

  private void put(int row, int column, Optional<Unit> unit, Map<Address, Unit> written) {
    unit.ifPresent(
        it -> grid.address(row, column).ifPresent(cell -> written.putIfAbsent(cell, it)));
  }

  private boolean isNumber(int row, int column) {
    return grid.cell(row, column).isFormula()
        || Cells.number(grid.cell(row, column)).isPresent();
  }

  private boolean isInATable(int row, int column) {
    return tables.stream().anyMatch(table -> {
      int along = table.isOnItsSide() ? column : row;
      int across = table.isOnItsSide() ? row : column;
      return table.rows().containsKey(along) && across >= table.first() && across <= table.last();
    });
  }

  /** Whether the row is of texts only, two or more of them side by side. */
  private boolean isHeading(int row) {
    int texts = 0;
    boolean pair = false;
    for (int column = 0; column < columns; column++) {
      if (isNumber(row, column)) {
        return false;
      }
      boolean text = !grid.text(row, column).isEmpty();
      pair |= text && column > 0 && !grid.text(row, column - 1).isEmpty();
      texts += text ? 1 : 0;
    }
    return texts > 1 && pair;
  }

  private void under(int heading, Map<Address, Unit> written) {
    for (int column = 0; column < columns; column++) {
      Optional<Unit> unit = headed(grid.text(heading, column));
      if (unit.isPresent()) {
        int end = end(heading + 1, column);
        for (int row = heading + 1; row < end; row++) {
          if (isNumber(row, column) && !isInATable(row, column)) {
            put(row, column, unit, written);
          }
        }
      }
    }
  }

  /**
   * The row where a column no longer runs under its heading: another text in it, a row that is blank, or a single value
   * beside its label: one number under rows of several, or fewer than those rows have once a total stood under them.
   */
  private int end(int from, int column) {
    long several = numbers(from);
    boolean totalled = false;
    int row = from;
    while (row < rows && grid.text(row, column).isEmpty() && !grid.isBlank(row, 0, columns - 1)) {
      long most = totalled ? several - 1 : Math.min(1, several - 1);
      if (isNumber(row, column) && numbers(row) <= most) {
        return row;
      }
      totalled |= TOTAL.matcher(grid.text(row, 0)).find();
      row++;
    }
    return row;
  }

  private long numbers(int row) {
    return numbers.computeIfAbsent(
        row,
        at -> IntStream.range(0, columns).filter(column -> isNumber(at, column)).count());
  }

  private Optional<Unit> beside(int row, int column) {
    if (isInATable(row, column)) {
      return FormatUnits.of(grid.cell(row, column).format()).flatMap(WrittenUnit::of);
    }
    return label(row, column)
        .flatMap(this::headed)
        .or(() -> FormatUnits.of(grid.cell(row, column).format()).flatMap(WrittenUnit::of))
        .or(() ->
            WrittenUnit.alone(grid.text(row, column + 1)).filter(unit -> isLast(row, column)));
  }

  /** A unit word right of the last number of a row belongs to that number. */
  private boolean isLast(int row, int column) {
    for (int right = column + 2; right < columns; right++) {
      if (!grid.isBlank(row, right)) {
        return false;
      }
    }
    return true;
  }

  private Optional<String> label(int row, int column) {
    for (int left = column - 1; left >= Math.max(0, column - LABEL_AWAY); left--) {
      if (isNumber(row, left)) {
        return Optional.empty();
      }
      String text = grid.text(row, left);
      if (!text.isEmpty()) {
        return Optional.of(text);
      }
    }
    return Optional.empty();
  }
}
