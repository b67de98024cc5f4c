package squaresheet.binding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.RoofNotes;
import squaresheet.sheet.Cell;

/**
 * What was read of a workbook of any layout.
 *
 * @param cells which cell is which item; a property goes by its name in the words file, such as {@code eave} or {@code
 *     sloped_area}; a sum over all planes is {@code all planes: sloped_area}
 * @param units the unit of each item's number, as {@code ft} or {@code $/bundle}; items without a unit are not in it
 * @param planes the planes that could be read as planes, by subject; empty where the workbook does not say enough
 * @param tables the tables with their rows in order
 * @param coverage how much of each part of the way to the price is bound
 * @param findings what could not be read, and what is not bound
 */
public record BoundBook(
    CellMap cells,
    Map<Where.OfItem, String> units,
    Map<String, PlaneNotes> planes,
    List<Table> tables,
    List<BoundJob.Part> coverage,
    List<Finding> findings) {

  public BoundBook {
    units = Map.copyOf(units);
    planes = Collections.unmodifiableMap(new LinkedHashMap<>(planes));
    tables = List.copyOf(tables);
    coverage = List.copyOf(coverage);
    findings = List.copyOf(findings);
  }

  /**
   * A table that is bound.
   *
   * @param name which one, such as {@code planes}
   * @param sheet the sheet it stands on
   * @param rows its items and sums, in order
   */
  public record Table(String name, String sheet, List<Row> rows) {
    public Table {
      rows = List.copyOf(rows);
    }
  }

  /**
   * A row of a bound table.
   *
   * @param subject what it is called in {@link BoundBook#cells()}
   * @param isSum whether it adds up rows before it
   */
  public record Row(String subject, boolean isSum) {}

  /** The planes as a roof. */
  public RoofNotes roof() {
    return new RoofNotes(new ArrayList<>(planes.values()));
  }

  /**
   * A number of an item in feet, square feet, rise per 12 or as a plain ratio, whatever unit its column is in.
   *
   * @return nothing where the unit is needed and not known, or where a ratio is none
   */
  public OptionalDouble plain(Where.OfItem item, Cell cell, double number) {
    return new ItemUnit(units.getOrDefault(item, ""), cell).plain(number);
  }

  /** The number as the item's column would show it; the way back from {@link #plain}. */
  public double inItsUnit(Where.OfItem item, Cell cell, double plain) {
    return new ItemUnit(units.getOrDefault(item, ""), cell).of(plain);
  }
}
