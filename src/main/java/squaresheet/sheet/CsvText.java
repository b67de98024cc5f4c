package squaresheet.sheet;

import java.util.regex.Pattern;

/** Text made safe for a csv file that someone will open in a spreadsheet program. */
final class CsvText {

  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+(\\.\\d+)?%?");
  /** First characters that a program may take for the start of a formula or a command. */
  private static final String STARTS = "=+-@\t\r\n|\uFF1D\uFF0B\uFF0D\uFF20";

  private CsvText() {}

  /** The text, with an apostrophe before it where a program would run it as a formula; plain numbers are left alone. */
  static String safe(String text) {
    String seen = text.stripLeading();
    boolean starts = startsFormula(text) || startsFormula(seen);
    return starts && !NUMBER.matcher(text).matches() ? "'" + text : text;
  }

  private static boolean startsFormula(String text) {
    return !text.isEmpty() && STARTS.indexOf(text.charAt(0)) >= 0;
  }
}
