package squaresheet.tape;

/** Something written in a place where a length or a pitch is wanted: text, or a spreadsheet number with its format. */
public sealed interface Written {

  /**
   * Text, as typed.
   *
   * @param text the text, which may be empty
   */
  record Text(String text) implements Written {}

  /**
   * A number in a spreadsheet cell.
   *
   * @param value any double
   * @param format the number format code, such as {@code General}, {@code 0.00} or {@code d-mmm}
   */
  record Number(double value, String format) implements Written {}

  /** Text, as typed. */
  static Written of(String text) {
    return new Text(text);
  }

  /** A number without a format of its own. */
  static Written of(double value) {
    return new Number(value, "General");
  }

  /** A number with the format code of its cell. */
  static Written of(double value, String format) {
    return new Number(value, format);
  }
}
