/**
 * Which cell is which value, both ways: the job workbook, the field sheet, and workbooks that others designed. Headings and
 * defined names are followed, never fixed places; what is not bound is not checked.
 */
@Room(
    floor = 7,
    uses = {
      "units",
      "sheet",
      "finding",
      "geometry",
      "product",
      "formula",
      "tape",
      "roof",
      "takeoff",
      "estimate",
      "courses",
      "job",
      "paper"
    })
package squaresheet.binding;

import squaresheet.house.Room;
