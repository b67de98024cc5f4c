package squaresheet.binding;

import java.util.List;
import java.util.Map;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.roof.RoofNotes;

/**
 * What was read of a workbook of any layout.
 *
 * @param cells which cell is which item; a property goes by its name in the words file, such as {@code eave} or {@code
 *     sloped_area}; a sum over all planes is {@code all planes: sloped_area}
 * @param units the unit of each item's number, as {@code ft} or {@code $/bundle}; items without a unit are not in it
 * @param roof the planes that could be read as planes; empty where the workbook does not say enough
 * @param coverage how much of each part of the way to the price is bound
 * @param findings what could not be read, and what is not bound
 */
public record BoundBook(
    CellMap cells,
    Map<Where.OfItem, String> units,
    RoofNotes roof,
    List<BoundJob.Part> coverage,
    List<Finding> findings) {

  public BoundBook {
    units = Map.copyOf(units);
    coverage = List.copyOf(coverage);
    findings = List.copyOf(findings);
  }
}
