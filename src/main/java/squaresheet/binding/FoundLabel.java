package squaresheet.binding;

import java.util.Optional;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;

/**
 * A value beside (or under) the label that names it.
 *
 * @param meaning what the label says
 * @param grid where it stands
 * @param heading the label as written
 * @param row the value's row
 * @param column the value's column
 * @param unit the unit named in the label or beside the value
 * @param sure how sure it is, 0 to 1
 * @param why in words
 */
record FoundLabel(
    Meaning meaning,
    Grid grid,
    Heading heading,
    int row,
    int column,
    Optional<UnitWord> unit,
    double sure,
    String why) {

  boolean isSure() {
    return sure >= FoundColumn.SURE;
  }

  Cell cell() {
    return grid.cell(row, column);
  }

  String text() {
    return Cells.text(cell());
  }

  Where where() {
    return grid.where(row, column, heading.text());
  }

  Optional<Address> address() {
    return grid.address(row, column);
  }
}
