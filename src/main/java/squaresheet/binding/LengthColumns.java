package squaresheet.binding;

import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;

/**
 * Columns of lengths that are typed in the unit the roof was measured in. Formulas count in feet; where the tape does not,
 * the feet stand beside what is typed.
 */
final class LengthColumns {

  /** Behind the name of a column: what is typed, where the name itself stands for the feet. */
  static final String TYPED = "_typed";

  private static final String FEET = "0.00##";

  private final TableDraft table;
  private final TapeUnit unit;

  LengthColumns(TableDraft table, TapeUnit unit) {
    this.table = table;
    this.unit = unit;
  }

  /** A column whose cells formulas read; a blank one counts as 0. */
  void add(String name, String heading, double width, IntFunction<Optional<Length>> of) {
    add(name, heading, width, of, cell -> cell + inFeet());
  }

  /** A column whose blank cells formulas tell from 0. */
  void addIfAny(String name, String heading, double width, IntFunction<Optional<Length>> of) {
    add(name, heading, width, of, cell -> "IF(" + cell + "=\"\",\"\"," + cell + inFeet() + ")");
  }

  private void add(
      String name,
      String heading,
      double width,
      IntFunction<Optional<Length>> of,
      UnaryOperator<String> feet) {
    if (unit == TapeUnit.FEET) {
      table.add(typed(name, heading, width, of));
      return;
    }
    table.add(typed(name + TYPED, heading, width, of));
    table.add(Column.of(
        name,
        heading + ", ft",
        width,
        item -> Entries.computed(feet.apply(table.here(item, name + TYPED)), FEET)));
  }

  /** A column that no formula reads. */
  void alone(String name, String heading, double width, IntFunction<Optional<Length>> of) {
    table.add(typed(name, heading, width, of));
  }

  private Column typed(
      String name, String heading, double width, IntFunction<Optional<Length>> of) {
    return Column.of(name, heading + ", " + symbol(), width, item -> of.apply(item)
        .map(this::input)
        .orElseGet(Entries::blankInput));
  }

  private Entry input(Length length) {
    return switch (unit) {
      case FEET -> Entries.input(length.toFeet(), FEET);
      case INCHES -> Entries.input(length.toInches(), FEET);
      case METRES -> Entries.input(length.toMetres(), "0.000##");
      case MILLIMETRES -> Entries.input(length.toMillimetres(), "0.0##");
    };
  }

  private String symbol() {
    return switch (unit) {
      case FEET -> "ft";
      case INCHES -> "in";
      case METRES -> "m";
      case MILLIMETRES -> "mm";
    };
  }

  /** What turns a typed cell into feet. */
  private String inFeet() {
    return switch (unit) {
      case FEET -> "";
      case INCHES -> "/12";
      case METRES -> "/0.3048";
      case MILLIMETRES -> "/304.8";
    };
  }

  /** What to type, as the head of a sheet says it. */
  static String say(TapeUnit unit) {
    return unit == TapeUnit.FEET
        ? "Lengths in decimal feet; x.5 is six inches."
        : "Lengths are typed in " + unit.word() + "; the feet beside them follow.";
  }
}
