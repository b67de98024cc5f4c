/**
 * Points, outlines with holes, and what a horizontal line or band cuts out of them: exact, with no floating point in any
 * decision. No roofing words.
 */
@Room(
    floor = 1,
    uses = {"units"})
package squaresheet.geometry;

import squaresheet.house.Room;
