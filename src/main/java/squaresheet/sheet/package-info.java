/**
 * A workbook as values: addresses, contents, stored values, names and edits. Knows no file format and computes nothing.
 */
@Room(floor = 0)
package squaresheet.sheet;

import squaresheet.house.Room;
