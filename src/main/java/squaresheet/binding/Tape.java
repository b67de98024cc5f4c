package squaresheet.binding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.tape.DateSystem;
import squaresheet.tape.Marks;
import squaresheet.tape.TapeReader;
import squaresheet.tape.TapeUnit;
import squaresheet.tape.Written;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/**
 * How lengths and pitches are read from a sheet's cells.
 *
 * @param declared the unit the sheet declares for bare numbers
 * @param marks the sheet's decimal mark and its order of day and month
 * @param dates how the workbook counts its days
 * @param asWritten whether an angle stays as it is written, because formulas compute with it, instead of being taken as the
 *     named pitch that was rounded to it
 */
record Tape(TapeUnit declared, Marks marks, DateSystem dates, boolean asWritten) {

  private static final Map<String, TapeUnit> UNITS = Map.of(
      "ft", TapeUnit.FEET,
      "in", TapeUnit.INCHES,
      "m", TapeUnit.METRES,
      "mm", TapeUnit.MILLIMETRES);

  /** The unit of angles, which stands in a heading or label for bare numbers. */
  private static final String DEGREES = "°";

  /** The tape unit of a unit word, if it is one. */
  static Optional<TapeUnit> unit(UnitWord word) {
    return Optional.ofNullable(UNITS.get(word.symbol()));
  }

  Read<Length> length(FoundTable table, int row, String property) {
    return reader(table, property)
        .length(written(table, row, property), table.where(row, property));
  }

  Read<Length> offset(FoundTable table, int row, String property) {
    return reader(table, property)
        .offset(written(table, row, property), table.where(row, property));
  }

  Read<Length> offset(String text, Where where) {
    return reader(declared).offset(text, where);
  }

  Read<Pitch> pitch(FoundTable table, int row, String property) {
    return pitch(table.cell(row, property), pitchUnit(table, property), table.where(row, property));
  }

  /** The pitch in a cell whose unit is known by its heading or label. */
  Read<Pitch> pitch(Cell cell, String unit, Where where) {
    Optional<Pitch.Span> span = asWritten ? pitchSpan(cell, unit) : Optional.empty();
    return span.map(it -> Read.of(it.written()))
        .orElseGet(() -> reader(declared).pitch(pitch(cell, unit), where));
  }

  /** What a pitch may be that is written as an angle or in percent. */
  Optional<Pitch.Span> pitchSpan(FoundTable table, int row, String property) {
    return pitchSpan(table.cell(row, property), pitchUnit(table, property));
  }

  private Optional<Pitch.Span> pitchSpan(Cell cell, String unit) {
    return reader(declared).pitchSpan(pitch(cell, unit));
  }

  private static Written pitch(Cell cell, String unit) {
    if (!unit.equals(DEGREES) || !isBareNumber(cell)) {
      return written(cell);
    }
    return cell.stored() instanceof Content.Numeric number
        ? Written.of(number.value(), cell.format() + DEGREES)
        : Written.of(Cells.text(cell) + DEGREES);
  }

  /** A number, or a text that is nothing else: the unit over it holds for it. */
  private static boolean isBareNumber(Cell cell) {
    return Cells.number(cell).isPresent()
        || Cells.words(cell).filter(text -> text.matches("[\\p{Nd}.,]+")).isPresent();
  }

  /** What to say of a bare number that is too large in its unit, and may be meant in a smaller one. */
  Optional<String> smallerUnit(FoundTable table, int row, String property) {
    Cell cell = table.cell(row, property);
    return isBareNumber(cell)
        ? smallerUnit(Cells.text(cell), reader(table, property).unit())
        : Optional.empty();
  }

  /** The same of a number beside a label. */
  static Optional<String> smallerUnit(String number, TapeUnit unit) {
    Optional<TapeUnit> smaller =
        switch (unit) {
          case FEET -> Optional.of(TapeUnit.INCHES);
          case METRES -> Optional.of(TapeUnit.MILLIMETRES);
          case INCHES, MILLIMETRES -> Optional.empty();
        };
    return smaller.map(it -> " is written as " + number + " without a unit, and reads as " + number
        + " " + unit.word() + "; " + number + " " + it.word() + "? write the unit behind it");
  }

  private static String pitchUnit(FoundTable table, String property) {
    return table
        .column(property)
        .flatMap(FoundColumn::unit)
        .map(UnitWord::symbol)
        .orElse("");
  }

  /** What there is to say once about a column of lengths without a unit in its heading. */
  List<Finding> remarks(FoundTable table, String property) {
    Optional<FoundColumn> column = table.column(property);
    boolean bare = column.isPresent() && column.get().unit().flatMap(Tape::unit).isEmpty();
    List<Written> all = table.rows(FoundTable.Row.DATA).stream()
        .map(row -> written(table, row, property))
        .toList();
    return bare
        ? reader(table, property).lengthColumn(all, table.where(table.heading(), property))
        : List.of();
  }

  private TapeReader reader(FoundTable table, String property) {
    return reader(
        table.column(property).flatMap(FoundColumn::unit).flatMap(Tape::unit).orElse(declared));
  }

  private TapeReader reader(TapeUnit unit) {
    return new TapeReader(unit, marks, dates);
  }

  /** What reads the value of a label, whose own unit goes before the sheet's. */
  TapeReader reader(Optional<UnitWord> unit) {
    return reader(unit.flatMap(Tape::unit).orElse(declared));
  }

  private static Written written(FoundTable table, int row, String property) {
    Optional<UnitWord> unit = table.column(property).flatMap(FoundColumn::unit);
    Cell cell = table.cell(row, property);
    boolean centimetres = unit.map(word -> word.symbol().equals("cm")).orElse(false);
    return centimetres && cell.stored() instanceof Content.Numeric number
        ? Written.of(Cells.plain(number.value()) + " cm")
        : written(cell);
  }

  static Written written(Cell cell) {
    return cell.stored() instanceof Content.Numeric number
        ? Written.of(number.value(), cell.format())
        : Written.of(Cells.text(cell));
  }
}
