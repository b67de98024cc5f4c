package squaresheet.sheet;

import java.util.List;

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
   * A table as the text of a csv file. Every text that a spreadsheet program would run as a formula gets an apostrophe before
   * it; plain numbers are left alone. No csv is written any other way.
   *
   * @param comments lines before the table, for people
   * @param rows the headings, then the rows
   */
  static String csv(List<String> comments, List<List<String>> rows) {
    return CsvText.write(comments, rows);
  }

  /** The text as {@link #csv} writes it. */
  static String safeForCsv(String text) {
    return CsvText.safe(text);
  }

  /**
   * Words as any file can hold them: a mark (U+FFFD) stands in the place of each control character and of whatever else XML
   * has no place for. For what is only looked at.
   */
  static String legible(String text) {
    return FileText.legible(text);
  }

  /** Words as a workbook file holds them: those characters are spelled, and read back by {@link #unspelled}. */
  static String spelled(String text) {
    return FileText.spelled(text);
  }

  /** The words that a workbook file holds so. */
  static String unspelled(String text) {
    return FileText.unspelled(text);
  }
}
