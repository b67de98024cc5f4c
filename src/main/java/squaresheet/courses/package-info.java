/**
 * The layout of the courses: lines to snap, joints that must not meet, pieces that are really laid, and the waste that
 * follows. Exact throughout; no floating point decides where a mark stands or whether a piece is needed.
 */
@Room(
    floor = 4,
    uses = {"units", "finding", "geometry", "product", "roof"})
package squaresheet.courses;

import squaresheet.house.Room;
