package squaresheet.judge.slip;

import java.util.List;
import java.util.Map;

/**
 * One fault put into a workbook, and all that is true of it.
 *
 * @param id its kind: an id of the list of errors ({@code MEC-01}), or a word for a typed slip or an honest edit
 * @param cells where it stands; a finding at one of them, or at the range that holds it, points at it exactly
 * @param name the slip in words, such as {@code digits swapped}
 * @param right what should stand in each cell: a number, a text, or a formula that begins with {@code =}
 * @param money how much more the job costs by it than it should, in the currency of the workbook
 * @param packs how many packs more are ordered by it, by cell of the order
 * @param identifiable whether something else in the same workbook contradicts it
 * @param harmless whether it is no fault: an honest edit, or something that only looks like a fault
 */
public record Slip(
    String id,
    List<String> cells,
    String name,
    Map<String, String> right,
    double money,
    Map<String, Double> packs,
    boolean identifiable,
    boolean harmless) {

  public Slip {
    cells = List.copyOf(cells);
    right = Map.copyOf(right);
    packs = Map.copyOf(packs);
  }

  /** The same slip, with what it is worth. */
  Slip worth(double moreMoney, Map<String, Double> morePacks) {
    return new Slip(id, cells, name, right, moreMoney, morePacks, identifiable, harmless);
  }
}
