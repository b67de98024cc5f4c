package squaresheet.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Cells in few bytes each: packed in chunks, in the order of rows and columns. A cell is known here by its index in that
 * order.
 */
final class CellStore {

  static final byte BLANK = 0;
  static final byte NUMBER = 1;
  static final byte SHARED_TEXT = 2;
  static final byte OWN_TEXT = 3;
  static final byte TRUTH = 4;
  static final byte FAULT = 5;

  private static final int CHUNK = 1 << 10;

  private final List<long[]> values = new ArrayList<>();
  private final List<char[]> columns = new ArrayList<>();
  private final List<short[]> formats = new ArrayList<>();
  private final List<byte[]> kinds = new ArrayList<>();
  private final List<Function<Ref, String>> formulas = new ArrayList<>();
  private int[] formulaCells = new int[16];
  private int[] rows = new int[16];
  private int[] starts = new int[16];
  private long[] lastValues = new long[0];
  private char[] lastColumns = new char[0];
  private short[] lastFormats = new short[0];
  private byte[] lastKinds = new byte[0];
  private int lastColumn;
  private int runs;
  private int size;
  private boolean ordered = true;

  int size() {
    return size;
  }

  void add(int row, int column, byte kind, short format, long value) {
    startRun(row, column);
    int at = size % CHUNK;
    if (at == 0) {
      startChunk();
    }
    lastValues[at] = value;
    lastColumns[at] = (char) column;
    lastFormats[at] = format;
    lastKinds[at] = kind;
    lastColumn = column;
    size++;
  }

  private void startChunk() {
    lastValues = new long[CHUNK];
    lastColumns = new char[CHUNK];
    lastFormats = new short[CHUNK];
    lastKinds = new byte[CHUNK];
    values.add(lastValues);
    columns.add(lastColumns);
    formats.add(lastFormats);
    kinds.add(lastKinds);
  }

  private void startRun(int row, int column) {
    if (runs > 0 && rows[runs - 1] == row) {
      ordered &= lastColumn < column;
      return;
    }
    ordered &= runs == 0 || rows[runs - 1] < row;
    if (runs == rows.length) {
      rows = Arrays.copyOf(rows, runs * 2);
      starts = Arrays.copyOf(starts, runs * 2);
    }
    rows[runs] = row;
    starts[runs++] = size;
  }

  /** Gives the cell added last a formula. */
  void formula(Function<Ref, String> text) {
    int count = formulas.size();
    if (count == formulaCells.length) {
      formulaCells = Arrays.copyOf(formulaCells, count * 2);
    }
    formulaCells[count] = size - 1;
    formulas.add(text);
  }

  /** The same cells in order; of two at one place the later one. */
  CellStore inOrder() {
    return ordered ? this : sorted();
  }

  private CellStore sorted() {
    long[] keys = new long[size];
    for (int run = 0; run < runs; run++) {
      for (int cell = starts[run]; cell < end(run); cell++) {
        keys[cell] = ((long) rows[run] << 14 | column(cell)) << 29 | cell;
      }
    }
    Arrays.sort(keys);
    CellStore sorted = new CellStore();
    for (int i = 0; i < size; i++) {
      if (i + 1 == size || keys[i] >>> 29 != keys[i + 1] >>> 29) {
        copy(keys[i], sorted);
      }
    }
    return sorted;
  }

  private void copy(long key, CellStore to) {
    int cell = (int) (key & (1 << 29) - 1);
    to.add((int) (key >>> 43), column(cell), kind(cell), format(cell), value(cell));
    int formula = formulaIndex(cell);
    if (formula >= 0) {
      to.formula(formulas.get(formula));
    }
  }

  /** The cell at the place, or a negative number. */
  int find(Ref ref) {
    int run = Arrays.binarySearch(rows, 0, runs, ref.row());
    if (run < 0) {
      return -1;
    }
    int low = starts[run];
    int high = end(run) - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      int column = column(middle);
      if (column == ref.column()) {
        return middle;
      }
      if (column < ref.column()) {
        low = middle + 1;
      } else {
        high = middle - 1;
      }
    }
    return -1;
  }

  IntStream runs() {
    return IntStream.range(0, runs);
  }

  /** The run of the row, or a negative number. */
  int run(int row) {
    return Arrays.binarySearch(rows, 0, runs, row);
  }

  int row(int run) {
    return rows[run];
  }

  int start(int run) {
    return starts[run];
  }

  int end(int run) {
    return run + 1 < runs ? starts[run + 1] : size;
  }

  int column(int cell) {
    return columns.get(cell / CHUNK)[cell % CHUNK];
  }

  byte kind(int cell) {
    return kinds.get(cell / CHUNK)[cell % CHUNK];
  }

  short format(int cell) {
    return formats.get(cell / CHUNK)[cell % CHUNK];
  }

  long value(int cell) {
    return values.get(cell / CHUNK)[cell % CHUNK];
  }

  /** The formula of the cell, empty where it has none. */
  String formula(int cell, Ref at) {
    int index = formulaIndex(cell);
    return index < 0 ? "" : formulas.get(index).apply(at);
  }

  boolean isFormula(int cell) {
    return formulaIndex(cell) >= 0;
  }

  private int formulaIndex(int cell) {
    return Arrays.binarySearch(formulaCells, 0, formulas.size(), cell);
  }
}
