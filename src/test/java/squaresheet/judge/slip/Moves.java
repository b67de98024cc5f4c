package squaresheet.judge.slip;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;

/**
 * Where the cells of a sheet went when rows or columns were put in or taken out, or the sheet was renamed.
 *
 * @param sheet the sheet's name before; empty where nothing went anywhere
 * @param name its name after
 * @param row the first row that moved, from 0
 * @param rows by how many rows, less than 0 where some were taken out
 * @param column the first column that moved, from 0
 * @param columns by how many columns
 */
public record Moves(String sheet, String name, int row, int rows, int column, int columns) {

  /** Everything stayed where it was. */
  static final Moves NONE = new Moves("", "", 0, 0, 0, 0);

  static Moves rows(String sheet, int row, int rows) {
    return new Moves(sheet, sheet, row, rows, 0, 0);
  }

  static Moves columns(String sheet, int column, int columns) {
    return new Moves(sheet, sheet, 0, 0, column, columns);
  }

  static Moves renamed(String sheet, String name) {
    return new Moves(sheet, name, 0, 0, 0, 0);
  }

  /** Where the cell that was at an address is now. */
  public String now(String at) {
    int mark = at.lastIndexOf('!');
    if (sheet.isEmpty() || mark < 0 || !at.substring(0, mark).equals(sheet)) {
      return at;
    }
    CellReference ref = new CellReference(at.substring(mark + 1));
    int down = ref.getRow() >= row ? ref.getRow() + rows : ref.getRow();
    int right = ref.getCol() >= column ? ref.getCol() + columns : ref.getCol();
    return name + "!" + new CellReference(down, right).formatAsString();
  }

  /** What is known by address, by where the cells are now. */
  <T> Map<String, T> now(Map<String, T> before) {
    Map<String, T> now = new HashMap<>();
    before.forEach((at, what) -> now.put(now(at), what));
    return now;
  }
}
