package squaresheet.binding;

import java.util.Optional;
import squaresheet.finding.Where;
import squaresheet.sheet.Cell;

/**
 * A value on a field sheet with the label that names it.
 *
 * @param property what the label says
 * @param label as written
 * @param cell the value
 * @param unit the unit named in the label or beside the value
 * @param where the place of the value
 */
record FieldLabel(String property, String label, Cell cell, Optional<UnitWord> unit, Where where) {

  String text() {
    return Cells.text(cell);
  }
}
