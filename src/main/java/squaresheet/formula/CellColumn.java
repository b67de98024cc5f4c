package squaresheet.formula;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** What stands in one column of a sheet: typed values and formula cells, from the top. */
final class CellColumn {

  /** So many sums with different first rows are remembered. */
  private static final int SUMS = 16;

  private int[] rows = new int[8];
  private Object[] cells = new Object[8];
  private int size;
  private ColumnIndex index;
  private final Map<Integer, RunningSum> sums = new LinkedHashMap<>();

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

  /** A sum from one row on that takes in nothing below another: begun before, or a new one. */
  RunningSum sum(int first, int last) {
    RunningSum before = sums.get(first);
    if (before != null && before.endsBy(last)) {
      return before;
    }
    if (sums.size() >= SUMS) {
      sums.clear();
    }
    RunningSum fresh = new RunningSum(from(first));
    sums.put(first, fresh);
    return fresh;
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
    sums.clear();
    index = null;
  }
}
