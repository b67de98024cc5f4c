/**
 * The file: bytes to a workbook of values and back. Every byte that no edit speaks of is kept, and nothing is saved without
 * a safe copy.
 */
@Room(
    floor = 2,
    uses = {"sheet", "finding"})
package squaresheet.xlsx;

import squaresheet.house.Room;
