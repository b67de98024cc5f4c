/**
 * The whole path from what was measured and chosen to what is ordered, laid out and priced, without reading or writing a
 * file. Here the simulated waste of the course layout is handed to the takeoff as a named value.
 */
@Room(
    floor = 6,
    uses = {
      "units",
      "finding",
      "product",
      "formula",
      "tape",
      "roof",
      "takeoff",
      "courses",
      "estimate"
    })
package squaresheet.job;

import squaresheet.house.Room;
