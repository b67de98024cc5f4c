package squaresheet.binding;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** The cells of a field sheet in which anything stands, each until somebody takes it: what is left at the end is told. */
final class FieldCells {

  private final IdentityHashMap<Grid, TreeMap<Integer, NavigableSet<Integer>>> left =
      new IdentityHashMap<>();

  /** All that stands on these grids. */
  FieldCells(List<Grid> grids) {
    grids.forEach(grid -> {
      TreeMap<Integer, NavigableSet<Integer>> rows = new TreeMap<>();
      grid.filled().forEach(place -> rows.computeIfAbsent(place.row(), row -> new TreeSet<>())
          .add(place.column()));
      left.put(grid, rows);
    });
  }

  /** A row of a grid with the columns of the cells that nobody has taken. */
  record Line(Grid grid, int row, List<Integer> columns) {
    Line {
      columns = List.copyOf(columns);
    }

    /** What stands in them, as written. */
    List<String> written() {
      return columns.stream().map(column -> Cells.text(grid.cell(row, column))).toList();
    }

    int first() {
      return columns.get(0);
    }
  }

  /** Takes a cell. */
  void take(Grid grid, int row, int column) {
    if (grid instanceof Grid.Turned turned) {
      take(turned.upright(), column, row);
      return;
    }
    TreeMap<Integer, NavigableSet<Integer>> rows = left.get(grid);
    NavigableSet<Integer> columns = rows.get(row);
    if (columns != null && columns.remove(column) && columns.isEmpty()) {
      rows.remove(row);
    }
  }

  /** Whether anything stands in the cell that nobody has taken. */
  boolean isLeft(Grid grid, int row, int column) {
    return grid instanceof Grid.Turned turned
        ? isLeft(turned.upright(), column, row)
        : left.get(grid).getOrDefault(row, new TreeSet<>()).contains(column);
  }

  /** The rows in which anything is left, from the top. */
  List<Line> lines(Grid grid) {
    List<Line> lines = new ArrayList<>();
    left.get(grid).forEach((row, columns) -> lines.add(new Line(grid, row, List.copyOf(columns))));
    return lines;
  }
}
