package squaresheet.formula;

/** Points at a place in a formula. */
final class Caret {

  /** The widest line shown; a longer formula is cut around the place. */
  private static final int WIDTH = 72;

  private Caret() {}

  /** The text with a space for every line end and other control character. */
  static String onOneLine(String text) {
    return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]", " ");
  }

  /** Two lines: the text, and a caret under the place. */
  static String under(String text, int place) {
    String line = onOneLine(text);
    int from = 0;
    if (line.length() > WIDTH) {
      from = Math.max(0, Math.min(place - WIDTH / 2, line.length() - WIDTH));
      line = line.substring(from, from + WIDTH);
    }
    return line + "\n" + " ".repeat(Math.min(place - from, WIDTH)) + "^";
  }
}
