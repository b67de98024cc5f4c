/**
 * What is counted and measured: lengths, areas in plan and on the slope, pitches, ratios, money, packs, and the named
 * roundings between them. Exact where a tape is exact, and open about it where a value is derived.
 */
@Room(floor = 0)
package squaresheet.units;

import squaresheet.house.Room;
