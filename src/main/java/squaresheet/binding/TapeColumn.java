package squaresheet.binding;

import squaresheet.sheet.DraftSheet.Entry;

/** Lengths that are kept in inches, as the crew's tape reads them: inches and fractions, or millimetres. */
record TapeColumn(boolean isMetric) {

  /** What stands over the column. */
  String heading() {
    return isMetric ? "Tape, mm" : "Tape, in";
  }

  /** A length in inches, by its formula. */
  Entry of(String inches) {
    return Entries.computed(read(inches), format());
  }

  /** The same where something was typed in a cell; nothing where it is empty. */
  Entry of(String typed, String inches) {
    return Entries.computed("IF(" + typed + "=\"\",\"\"," + read(inches) + ")", format());
  }

  /** A length in inches that does not follow anything. */
  Entry still(double inches) {
    return Entry.number(isMetric ? inches * 25.4 : inches).format(format());
  }

  /** A length in inches, by its formula, in decimals: what need not stand on a mark. */
  Entry decimal(String inches) {
    return Entries.computed(read(inches), isMetric ? "0.0" : "0.00##");
  }

  /** A length to be typed as the tape reads it. */
  Entry typed(double inches) {
    return Entries.input(isMetric ? inches * 25.4 : inches, isMetric ? "0.0" : "0.00##");
  }

  /** The unit of the tape. */
  String unit() {
    return isMetric ? "mm" : "inches";
  }

  private String read(String inches) {
    return isMetric ? "(" + inches + ")*25.4" : inches;
  }

  /** A cell of this column, in inches again. */
  String inches(String cell) {
    return isMetric ? cell + "/25.4" : cell;
  }

  private String format() {
    return isMetric ? "0.0" : "# ??/??";
  }

  /** The finest mark of the tape, in inches, as a formula spells it. */
  String mark() {
    return isMetric ? "(1/25.4)" : "(1/16)";
  }
}
