/** The commands: what each reads and writes, how findings are printed, and the exit codes. Computes nothing itself. */
@Room(
    floor = 9,
    uses = {
      "units",
      "sheet",
      "finding",
      "xlsx",
      "formula",
      "product",
      "roof",
      "takeoff",
      "courses",
      "estimate",
      "job",
      "paper",
      "binding",
      "verify"
    })
package squaresheet.cli;

import squaresheet.house.Room;
