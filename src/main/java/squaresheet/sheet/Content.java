package squaresheet.sheet;

/** What a cell holds, or what its formula came to when the workbook was last saved. */
public sealed interface Content {

  /** Nothing at all. */
  record Blank() implements Content {}

  /**
   * A number; dates are numbers with a date format.
   *
   * @param value any finite double
   */
  record Numeric(double value) implements Content {}

  /**
   * Text, which may be empty where a formula gave it.
   *
   * @param value the text
   */
  record Text(String value) implements Content {}

  /**
   * TRUE or FALSE.
   *
   * @param value which
   */
  record Truth(boolean value) implements Content {}

  /**
   * A spreadsheet error.
   *
   * @param code as spelled in the cell, such as {@code #REF!}
   */
  record Fault(String code) implements Content {}

  /** Whether there is nothing here. */
  default boolean isBlank() {
    return this instanceof Blank;
  }

  /**
   * The text as a csv file may hold it: with an apostrophe before it where a spreadsheet program would run it as a
   * formula. Plain numbers are left alone.
   */
  static String safeForCsv(String text) {
    return CsvText.safe(text);
  }
}
