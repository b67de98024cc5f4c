/**
 * What people write down: lengths and pitches in all their notations, read at a place with findings and printed back.
 * Decimal slips, decimal commas and pitches that a spreadsheet program turned into dates or times are recognised.
 */
@Room(
    floor = 2,
    uses = {"units", "finding"})
package squaresheet.tape;

import squaresheet.house.Room;
