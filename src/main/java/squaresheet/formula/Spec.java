package squaresheet.formula;

/**
 * A function: its name, how many arguments it takes, which of them take many values, and what it does.
 *
 * @param name in capitals
 * @param least the fewest arguments
 * @param most the most arguments
 * @param takes one letter per argument, the last (or the last after {@code *}, in turn) repeated: {@code s} one value,
 *     {@code m} many values or a reference, {@code a} an array computed element by element
 * @param body what it does
 */
record Spec(String name, int least, int most, String takes, Body body) {

  /** As many arguments as a spreadsheet program takes. */
  static final int ANY = 255;

  /** What a function does. */
  @FunctionalInterface
  interface Body {
    /** The value for these arguments; may signal a spreadsheet error. */
    Value apply(Arguments arguments);
  }

  /** What the argument takes: {@code s}, {@code m} or {@code a}. */
  char takes(int argument) {
    int star = takes.indexOf('*');
    String letters = star < 0 ? takes : takes.substring(0, star) + takes.substring(star + 1);
    if (argument < letters.length()) {
      return letters.charAt(argument);
    }
    int repeated = star < 0 ? 1 : letters.length() - star;
    int from = letters.length() - repeated;
    return letters.charAt(from + (argument - from) % repeated);
  }
}
