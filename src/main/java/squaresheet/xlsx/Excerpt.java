package squaresheet.xlsx;

/** Text from a file, short and on one line, as a sentence may quote it. */
final class Excerpt {

  private static final int LONGEST = 40;

  private Excerpt() {}

  static String of(String text) {
    String line = text.replaceAll("\\p{Cntrl}+", " ").strip();
    return line.length() <= LONGEST ? line : line.substring(0, LONGEST) + "…";
  }
}
