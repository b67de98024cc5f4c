package squaresheet.formula;

import java.util.Arrays;

/** What stands in one column of a sheet: typed values and formula cells, from the top. */
final class CellColumn {

  private int[] rows = new int[8];
  private Object[] cells = new Object[8];
  private int size;
  private ColumnIndex index;

  /** Adds a cell below all that are there. */
  void add(int row, Object cell) {
    if (size == rows.length) {
      rows = Arrays.copyOf(rows, size * 2);
      cells = Arrays.copyOf(cells, size * 2);
    }
    rows[size] = row;
    cells[size++] = cell;
  }

  int size() {
    return size;
  }

  int row(int place) {
    return rows[place];
  }

  Object cell(int place) {
    return cells[place];
  }

  void set(int place, Object cell) {
    cells[place] = cell;
  }

  /** The place of the cell in a row; negative where there is none. */
  int find(int row) {
    int near = size == 0 ? -1 : row - rows[0];
    return near >= 0 && near < size && rows[near] == row
        ? near
        : Arrays.binarySearch(rows, 0, size, row);
  }

  /** The place of the first cell in that row or below it. */
  int from(int row) {
    int found = find(row);
    return found >= 0 ? found : -found - 1;
  }

  /** Where each value stands; made when it is first asked for and kept in step with what formulas come to. */
  ColumnIndex index() {
    if (index == null) {
      index = new ColumnIndex();
      for (int place = 0; place < size; place++) {
        index.add(rows[place], Tabs.Tab.valueOf(cells[place]));
      }
    }
    return index;
  }

  /** Lets the index know what a formula has come to. */
  void worked(int row, Value value) {
    if (index != null) {
      index.worked(row, value);
    }
  }

  void forget() {
    index = null;
  }
}
