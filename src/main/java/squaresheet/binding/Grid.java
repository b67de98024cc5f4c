package squaresheet.binding;

import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;

/** Cells in rows and columns, as tables are looked for: a sheet, a sheet turned on its side, the lines of a text file. */
interface Grid {

  /** The name of the sheet or file. */
  String name();

  /**
   * A place on a grid.
   *
   * @param row 0 and up
   * @param column 0 and up
   */
  record Place(int row, int column) {}

  /** The places at which anything is to be seen. */
  Stream<Place> filled();

  /** One more than the last row that holds anything. */
  int rows();

  /** One more than the last column that holds anything. */
  int columns();

  /** The cell there; empty past the edges. */
  Cell cell(int row, int column);

  /** The place as a finding names it. */
  Where where(int row, int column);

  /** The place as a finding names it, in a column under this heading. */
  default Where where(int row, int column, String heading) {
    return where(row, column);
  }

  /** The cell's address; none where this is no sheet. */
  Optional<Address> address(int row, int column);

  /** The text there, or the text of the merged cells that cover it. */
  default String spreadText(int row, int column) {
    return text(row, column);
  }

  /** Rows as columns and columns as rows. */
  default Grid turned() {
    return new Turned(this);
  }

  /** The text there, stripped; empty where there is none or where it is a number. */
  default String text(int row, int column) {
    return cell(row, column).stored() instanceof Content.Text text
        ? text.value().strip()
        : "";
  }

  /** Whether nothing stands in the row, from one column to another, both included. */
  default boolean isBlank(int row, int from, int to) {
    for (int column = from; column <= to; column++) {
      if (!isBlank(row, column)) {
        return false;
      }
    }
    return true;
  }

  /** Whether nothing to be seen stands there: no formula, and no content but spaces. */
  default boolean isBlank(int row, int column) {
    Cell cell = cell(row, column);
    return !cell.isFormula()
        && (cell.stored().isBlank()
            || (cell.stored() instanceof Content.Text text && text.value().isBlank()));
  }

  /** A grid turned on its side. */
  record Turned(Grid upright) implements Grid {

    @Override
    public String name() {
      return upright.name();
    }

    @Override
    public Stream<Place> filled() {
      return upright
          .filled()
          .map(place -> new Place(/* row= */ place.column(), /* column= */ place.row()));
    }

    @Override
    public int rows() {
      return upright.columns();
    }

    @Override
    public int columns() {
      return upright.rows();
    }

    @Override
    public Cell cell(int row, int column) {
      return upright.cell(column, row);
    }

    @Override
    public Where where(int row, int column) {
      return upright.where(column, row);
    }

    @Override
    public Where where(int row, int column, String heading) {
      return upright.where(column, row, heading);
    }

    @Override
    public Optional<Address> address(int row, int column) {
      return upright.address(column, row);
    }

    @Override
    public String spreadText(int row, int column) {
      return upright.spreadText(column, row);
    }

    @Override
    public Grid turned() {
      return upright;
    }
  }
}
