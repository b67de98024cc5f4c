package squaresheet.formula;

import java.util.List;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** Looking values up in cells, and asking where cells are. */
final class LookupFunctions {

  private LookupFunctions() {}

  static List<Spec> specs() {
    return List.of(
        new Spec("VLOOKUP", 3, 4, "smss", it -> table(it, true)),
        new Spec("HLOOKUP", 3, 4, "smss", it -> table(it, false)),
        new Spec("LOOKUP", 2, 3, "saa", LookupFunctions::lookup),
        new Spec("MATCH", 2, 3, "sms", LookupFunctions::match),
        new Spec("XMATCH", 2, 4, "smss", it -> Value.of(Search.extended(it, 2, 3) + 1)),
        new Spec("XLOOKUP", 3, 6, "smmsss", LookupFunctions::extended),
        new Spec("INDEX", 2, 4, "asss", it -> it.evaluation().intersected(indexed(it))),
        new Spec("CHOOSE", 2, Spec.ANY, "s", LookupFunctions::chosen),
        new Spec("ROW", 0, 1, "m", it -> place(it, true)),
        new Spec("COLUMN", 0, 1, "m", it -> place(it, false)),
        new Spec("ROWS", 1, 1, "m", it -> Value.of(it.grid(0).askedRows())),
        new Spec("COLUMNS", 1, 1, "m", it -> Value.of(it.grid(0).askedColumns())),
        new Spec("INDIRECT", 1, 2, "s", it -> notFollowed("INDIRECT")),
        new Spec("OFFSET", 3, 5, "ms", it -> notFollowed("OFFSET")),
        new Spec("TRANSPOSE", 1, 1, "m", LookupFunctions::transposed));
  }

  private static Value notFollowed(String function) {
    throw Signal.notChecked(
        "function " + function + " works out its cells while it runs and is not followed");
  }

  private static Value table(Arguments arguments, boolean down) {
    Value wanted = arguments.sound(0);
    Grid table = arguments.grid(1);
    int result = arguments.whole(2) - 1;
    if (result < 0) {
      throw Signal.VALUE;
    }
    if (result >= (down ? table.askedColumns() : table.askedRows())) {
      throw Signal.REFERENCE;
    }
    Grid keys = table.line(0, down);
    boolean nearest = arguments.truth(3, true);
    int found = nearest ? Search.lastAtMost(keys, wanted) : Search.exact(keys, wanted, true);
    if (found < 0) {
      throw Signal.MISSING;
    }
    return down ? table.at(found, result) : table.at(result, found);
  }

  private static Value lookup(Arguments arguments) {
    Value wanted = arguments.sound(0);
    Grid grid = arguments.array(1);
    boolean wide = grid.columns > grid.rows;
    Grid keys = grid.rows > 1 && grid.columns > 1 ? grid.line(0, !wide) : grid;
    int found = Search.lastAtMost(keys, wanted);
    if (found < 0) {
      throw Signal.MISSING;
    }
    if (arguments.has(2)) {
      Grid results = arguments.array(2);
      results.lineLength();
      return results.rows == 1 ? results.at(0, found) : results.at(found, 0);
    }
    return wide ? grid.at(grid.rows - 1, found) : grid.at(found, grid.columns - 1);
  }

  private static Value match(Arguments arguments) {
    Value wanted = arguments.sound(0);
    Grid cells = arguments.grid(1);
    requireOneReading(arguments, cells);
    cells.lineLength();
    double kind = arguments.number(2, 1);
    int found = kind == 0
        ? Search.exact(cells, wanted, true)
        : kind > 0 ? Search.lastAtMost(cells, wanted) : Search.lastAtLeast(cells, wanted);
    if (found < 0) {
      throw Signal.MISSING;
    }
    return Value.of(found + 1);
  }

  /** Cells under operators are one cell to some programs here and an array to others. */
  private static void requireOneReading(Arguments arguments, Grid cells) {
    if (cells.isSingle() && !cells.isReference() && ArrayWork.hides(arguments.node(1))) {
      throw Signal.notChecked(
          "MATCH in cells under operators, outside an array formula, differs between programs");
    }
  }

  private static Value extended(Arguments arguments) {
    int found;
    try {
      found = Search.extended(arguments, 4, 5);
    } catch (Signal missing) {
      if (LogicFunctions.isMissing(missing.fault()) && arguments.has(3)) {
        return arguments.value(3);
      }
      throw missing;
    }
    Grid keys = arguments.grid(1);
    Grid results = arguments.grid(2);
    boolean down = (keys.columns == 1 && keys.askedRows() > 1) || results.columns == 1;
    if ((down ? results.askedRows() : results.askedColumns()) != keys.askedSize()) {
      throw Signal.VALUE;
    }
    Grid line = results.line(found, !down);
    return line.toValue();
  }

  /** The part of a reference or array that INDEX gives. */
  static Grid indexed(Arguments arguments) {
    Grid grid = arguments.array(0);
    boolean line = grid.askedRows() == 1 && arguments.size() == 2;
    int row = line ? 0 : arguments.whole(1, 0);
    int column = line ? arguments.whole(1, 0) : arguments.whole(2, 0);
    if (row < 0 || column < 0) {
      throw Signal.VALUE;
    }
    if (arguments.has(3)) {
      throw Signal.notChecked("INDEX into one of several blocks is not followed");
    }
    if (row > grid.askedRows() || column > grid.askedColumns()) {
      throw Signal.REFERENCE;
    }
    if (grid.isReference()) {
      return arguments.evaluation().cells(grid.sheet(), part(grid.asked, row, column));
    }
    return inner(grid, row, column);
  }

  private static Block part(Block whole, int row, int column) {
    Ref first = whole.first().plus(Math.max(row - 1, 0), Math.max(column - 1, 0));
    int lastRow = row == 0 ? whole.last().row() : first.row();
    int lastColumn = column == 0 ? whole.last().column() : first.column();
    return new Block(first, new Ref(lastRow, lastColumn));
  }

  private static Grid inner(Grid grid, int row, int column) {
    if (row > 0 && column > 0) {
      return Grid.of(grid.at(row - 1, column - 1));
    }
    if (row == 0 && column == 0) {
      return grid;
    }
    return row == 0 ? grid.line(column - 1, true) : grid.line(row - 1, false);
  }

  private static Value chosen(Arguments arguments) {
    int choice = arguments.whole(0);
    if (choice < 1 || choice >= arguments.size()) {
      throw Signal.VALUE;
    }
    return arguments.value(choice);
  }

  private static Value place(Arguments arguments, boolean row) {
    if (arguments.size() == 0) {
      Ref here = arguments
          .evaluation()
          .scope()
          .here()
          .orElseThrow(() -> Signal.notChecked("the formula stands in no cell"))
          .ref();
      return Value.of((row ? here.row() : here.column()) + 1);
    }
    Block block = arguments.evaluation().place(arguments.node(0));
    int count = row ? block.rows() : block.columns();
    if (count == 1 || count > 10_000) {
      return Value.of((row ? block.first().row() : block.first().column()) + 1);
    }
    Value[] places = new Value[count];
    for (int i = 0; i < count; i++) {
      places[i] = Value.of((row ? block.first().row() : block.first().column()) + i + 1);
    }
    return (row ? Grid.of(count, 1, places) : Grid.of(1, count, places)).toValue();
  }

  private static Value transposed(Arguments arguments) {
    Grid grid = arguments.grid(0);
    Value[] turned = new Value[grid.size()];
    for (int i = 0; i < turned.length; i++) {
      turned[i] = grid.at(i % grid.rows, i / grid.rows);
    }
    return Grid.of(grid.columns, grid.rows, turned).toValue();
  }
}
