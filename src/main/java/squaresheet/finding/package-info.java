/**
 * What is said about a user's input: a finding with its place, and what was read in spite of it. Checks are asked here and
 * answered elsewhere.
 */
@Room(
    floor = 1,
    uses = {"sheet"})
package squaresheet.finding;

import squaresheet.house.Room;
