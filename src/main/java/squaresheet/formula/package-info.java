/**
 * Cell formulas: read, printed, moved, evaluated by a second engine, given units and explained. What stands behind a
 * reference or a name is answered by the caller's {@code Scope}.
 */
@Room(
    floor = 2,
    uses = {"units", "sheet", "finding"})
package squaresheet.formula;

import squaresheet.house.Room;
