package squaresheet.binding;

import squaresheet.sheet.Address;

/**
 * What a column or a cell of a workbook seems to be.
 *
 * @param table the table it belongs to, such as {@code planes}; {@code job} for a value beside its label
 * @param property what it is, such as {@code eave}
 * @param unit the unit its numbers are in, or empty where that does not matter or is not known
 * @param at the cell of the heading; for a value beside its label the cell of the value
 * @param across whether the items stand side by side, so that this heads a row
 * @param sure how sure that is, 0 to 1
 * @param why in words
 */
public record Guess(
    String table,
    String property,
    String unit,
    Address at,
    boolean across,
    double sure,
    String why) {

  /** Whether it is bound without asking. */
  public boolean isSure() {
    return sure >= FoundColumn.SURE;
  }

  /** Whether it heads a column (or a row) rather than being a value itself. */
  public boolean isHeading() {
    return !table.equals("job");
  }

  /** The same, agreed by a person. */
  public Guess agreed() {
    return new Guess(table, property, unit, at, across, 1, "agreed");
  }

  /** The same in another unit. */
  public Guess in(String otherUnit) {
    return new Guess(table, property, otherUnit, at, across, sure, why);
  }

  /** For people: {@code Planes!B5 is planes.eave in ft (95 %: heading 'Length (ft)' says length)}. */
  @Override
  public String toString() {
    String in = unit.isEmpty() ? "" : " in " + unit;
    return at + " is " + table + "." + property + in + " (" + Math.round(sure * 100) + " %: " + why
        + ")";
  }
}
