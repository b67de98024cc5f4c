package squaresheet.judge.slip;

import java.util.List;
import java.util.Map;
import java.util.Set;
import squaresheet.judge.made.MadeBook;

/**
 * A made workbook with faults in it.
 *
 * @param made as it was
 * @param slips what was put in
 * @param file the bytes of the file, saved and calculated by the other program
 * @param shown what each cell showed before, where it was a number, by where the cell is now
 * @param moved the cells that show something else than before
 * @param moves where cells went by what was put in
 */
@SuppressWarnings("ArrayRecordComponent") // the bytes of a file, never compared
public record Spoilt(
    MadeBook made,
    List<Slip> slips,
    byte[] file,
    Map<String, Double> shown,
    Set<String> moved,
    Moves moves) {

  public Spoilt {
    slips = List.copyOf(slips);
    shown = Map.copyOf(shown);
    moved = Set.copyOf(moved);
  }
}
