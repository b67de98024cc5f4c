package squaresheet.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** Values in rows and columns while they are computed with; where they are cells, it knows which. */
final class Grid {

  final int rows;
  final int columns;
  private final List<Value> cells;
  /** The sheet these cells stand on; null where this is no reference, or one of several blocks. */
  private final String sheet;
  /** The block as it was asked for, which may reach beyond the used cells; null where this is no reference. */
  final Block asked;

  private Grid(int rows, int columns, List<Value> cells, String sheet, Block asked) {
    this.rows = rows;
    this.columns = columns;
    this.cells = cells;
    this.sheet = sheet;
    this.asked = asked;
  }

  static Grid of(Value value) {
    if (value instanceof Value.Matrix matrix) {
      return new Grid(matrix.rows(), matrix.columns(), matrix.cells(), null, null);
    }
    return new Grid(1, 1, List.of(value), null, null);
  }

  static Grid of(int rows, int columns, Value[] cells) {
    return new Grid(rows, columns, Arrays.asList(cells), null, null);
  }

  static Grid reference(Value.Matrix values, String sheet, Block asked) {
    return new Grid(values.rows(), values.columns(), values.cells(), sheet, asked);
  }

  static Grid reference(Value value, Address cell) {
    Block one = new Block(cell.ref(), cell.ref());
    return new Grid(1, 1, List.of(value), cell.sheet(), one);
  }

  /** Blocks of cells taken together, one below the other. */
  static Grid union(Value.Matrix column) {
    return new Grid(
        column.rows(),
        1,
        column.cells(),
        null,
        new Block(new Ref(0, 0), new Ref(column.rows() - 1, 0)));
  }

  /** The sheet these cells stand on, where they are one block. */
  String sheet() {
    if (sheet == null) {
      throw Signal.notChecked("several blocks of cells where one is asked for");
    }
    return sheet;
  }

  boolean isReference() {
    return asked != null;
  }

  boolean isSingle() {
    return rows == 1 && columns == 1;
  }

  int size() {
    return cells.size();
  }

  /** How many cells were asked for, blank ones beyond the used block included. */
  long askedSize() {
    return asked == null ? size() : (long) asked.rows() * asked.columns();
  }

  int askedRows() {
    return asked == null ? rows : asked.rows();
  }

  int askedColumns() {
    return asked == null ? columns : asked.columns();
  }

  /** The value at a place counted row by row. */
  Value at(int index) {
    return known(cells.get(index));
  }

  /** The value in a row and a column; blank beyond the used block. */
  Value at(int row, int column) {
    if (row >= rows || column >= columns) {
      return BLANK;
    }
    return known(cells.get(row * columns + column));
  }

  /** The value in a row and a column, where a single row, column or value stretches over any size. */
  Value stretched(int row, int column) {
    int fromRow = rows == 1 ? 0 : row;
    int fromColumn = columns == 1 ? 0 : column;
    return fromRow < rows && fromColumn < columns
        ? known(cells.get(fromRow * columns + fromColumn))
        : Signal.MISSING.value();
  }

  /** This row or column as a line of values; anything else is refused. */
  int lineLength() {
    if (rows != 1 && columns != 1) {
      throw Signal.MISSING;
    }
    return size();
  }

  /** One of its columns or rows; of cells, only what is asked for is read. */
  Grid line(int index, boolean column) {
    int size = column ? rows : columns;
    if (cells instanceof BlockValues block) {
      BlockValues line = block.line(index, column);
      return new Grid(column ? size : 1, column ? 1 : size, line, null, null);
    }
    Value[] values = new Value[size];
    for (int i = 0; i < size; i++) {
      values[i] = column ? at(i, index) : at(index, i);
    }
    return column ? of(size, 1, values) : of(1, size, values);
  }

  /** The cells of one long column, if that is what this is and they can be found by their values. */
  Optional<BlockValues> indexed() {
    return cells instanceof BlockValues block && block.isIndexed()
        ? Optional.of(block)
        : Optional.empty();
  }

  /** Shows every value but blank cells, row by row. */
  void eachFilled(Consumer<Value> visitor) {
    boolean shown = cells instanceof BlockValues block
        && block.eachFilled(value -> visitor.accept(known(value)));
    for (int i = 0; !shown && i < size(); i++) {
      visitor.accept(at(i));
    }
  }

  /** The sum of the numbers, where these are the cells of one column. */
  OptionalDouble columnSum() {
    return cells instanceof BlockValues block ? block.columnSum() : OptionalDouble.empty();
  }

  Value toValue() {
    return isSingle() ? at(0) : new Value.Matrix(rows, columns, new ArrayList<>(cells));
  }

  static Value known(Value value) {
    if (value instanceof Value.NotChecked unknown) {
      throw Signal.of(unknown);
    }
    return value;
  }

  private static final Value BLANK = new Value.Blank();
}
