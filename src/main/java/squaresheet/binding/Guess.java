package squaresheet.binding;

import java.util.List;
import squaresheet.finding.Read;
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

  /** The same cell, taken for something else. */
  Guess as(String otherTable, String otherProperty, String otherUnit) {
    return new Guess(otherTable, otherProperty, otherUnit, at, across, sure, why);
  }

  /** The same, no surer than this, for one more reason. */
  Guess doubted(double most, String reason) {
    return new Guess(table, property, unit, at, across, Math.min(sure, most), why + "; " + reason);
  }

  /** The same in another cell. */
  Guess at(Address other) {
    return new Guess(table, property, unit, other, across, sure, why);
  }

  /** The same in another unit. */
  public Guess in(String otherUnit) {
    return new Guess(table, property, otherUnit, at, across, sure, why);
  }

  /** What it is, in words: {@code sloped area}. */
  public String inWords() {
    return property.replace('_', ' ');
  }

  /** Everything that a cell of the table can be. */
  public List<String> choices() {
    return Words.of(table).stream()
        .filter(meaning -> meaning.role() != Meaning.Role.TITLE)
        .map(Meaning::property)
        .toList();
  }

  /** Whether its numbers are lengths or areas of which nobody says the unit. */
  public boolean wantsUnit() {
    return unit.isEmpty()
        && Words.find(table, property).filter(Meaning::isMeasured).isPresent();
  }

  /**
   * What a person says it is: {@code y}, {@code y ft}, {@code eave}, {@code sloped area in sq ft}, {@code edges.length m}. A
   * finding where that cannot be.
   */
  public Read<Guess> told(String words) {
    return Told.of(this, words);
  }

  /** For people: {@code Planes!B5 is planes.eave in ft (95 %: heading 'Length (ft)' says length)}. */
  @Override
  public String toString() {
    String in = unit.isEmpty() ? "" : " in " + unit;
    return at + " is " + table + "." + property + in + " (" + Math.round(sure * 100) + " %: " + why
        + ")";
  }
}
