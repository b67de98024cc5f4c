package squaresheet.binding;

import java.util.List;
import squaresheet.finding.Finding;
import squaresheet.sheet.Address;
import squaresheet.sheet.Edit;

/**
 * What it takes to write a job into a workbook's own cells.
 *
 * @param edits all of it, with every formula's value worked out anew; none where something keeps it from being written
 * @param changes the cells that change what is typed or get a formula, in the order of the sheets
 * @param findings what found no cell, what stays as it is, and which formulas make something else than the model
 */
public record Filled(List<Edit> edits, List<Change> changes, List<Finding> findings) {

  public Filled {
    edits = List.copyOf(edits);
    changes = List.copyOf(changes);
    findings = List.copyOf(findings);
  }

  /**
   * A cell that changes.
   *
   * @param cell the cell
   * @param item what it is, such as {@code Front: eave}
   * @param before what stood there, a formula with its equals sign; empty where nothing did
   * @param after what stands there then
   */
  public record Change(Address cell, String item, String before, String after) {

    /** For people: {@code Takeoff!C4  Front: eave  46 -> 44}. */
    @Override
    public String toString() {
      String from = before.isEmpty() ? "(empty)" : before;
      return cell + "  " + item + "  " + from + " -> " + (after.isEmpty() ? "(empty)" : after);
    }
  }
}
