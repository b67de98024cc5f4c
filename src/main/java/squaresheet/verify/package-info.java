/**
 * The verify pass: reads a workbook back, works it out anew and says what is wrong, where, and what it is worth. Totals
 * come only from a pass without errors.
 */
@Room(
    floor = 8,
    uses = {
      "units",
      "sheet",
      "finding",
      "product",
      "formula",
      "tape",
      "roof",
      "takeoff",
      "courses",
      "estimate",
      "job",
      "binding"
    })
package squaresheet.verify;

import squaresheet.house.Room;
