/**
 * The roof: what was measured of its planes and edges as written, and the same resolved, consistent and with every shared
 * edge counted once. No quantities of material.
 */
@Room(
    floor = 3,
    uses = {"units", "finding", "geometry"})
package squaresheet.roof;

import squaresheet.house.Room;
