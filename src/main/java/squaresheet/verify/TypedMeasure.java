package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.sheet.Content;
import squaresheet.units.Unit;

/**
 * A typed number of squares, with the other areas of the book to hold it against.
 *
 * @param cell the cell
 * @param squares the number typed
 * @param others the areas of the other cells
 */
record TypedMeasure(TypedCell cell, double squares, List<Other> others) {

  /**
   * An area in another cell.
   *
   * @param at the cell, as people write it
   * @param unit its unit
   * @param value its number
   */
  record Other(String at, Unit unit, double value) {}

  static Stream<TypedMeasure> of(Book book, List<TypedCell> typed, KnownUnits units) {
    List<TypedCell> squares = typed.stream()
        .filter(cell -> cell.cell().stored() instanceof Content.Numeric)
        .filter(cell -> units
            .written(cell.at())
            .filter(unit -> unit.kind() == Unit.Kind.SQUARES)
            .isPresent())
        .toList();
    List<Other> areas = squares.isEmpty() ? List.of() : areas(book, units);
    return squares.stream()
        .map(cell -> new TypedMeasure(cell, book.number(cell.at()).orElse(0), areas));
  }

  private static List<Other> areas(Book book, KnownUnits units) {
    return book.formulas().keySet().stream()
        .flatMap(at -> units.unit(at).filter(Unit::isArea).stream()
            .flatMap(unit ->
                book.number(at).stream().mapToObj(value -> new Other(at.toString(), unit, value))))
        .toList();
  }
}
