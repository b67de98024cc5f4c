package squaresheet.binding;

/** Slips of the keyboard in a heading. */
final class Spelling {

  /** Shorter words differ by one letter too easily to be taken for each other. */
  private static final int SHORTEST = 5;

  private Spelling() {}

  /** Whether the two words are equal, or long enough and one letter apart (added, left out, changed, or two swapped). */
  static boolean isClose(String one, String other) {
    if (one.equals(other)) {
      return true;
    }
    int longer = Math.max(one.length(), other.length());
    return Math.min(one.length(), other.length()) >= SHORTEST - 1
        && longer >= SHORTEST
        && Math.abs(one.length() - other.length()) <= 1
        && isOneSlip(one, other);
  }

  private static boolean isOneSlip(String one, String other) {
    int same = 0;
    while (same < Math.min(one.length(), other.length())
        && one.charAt(same) == other.charAt(same)) {
      same++;
    }
    String restOne = one.substring(same);
    String restOther = other.substring(same);
    return tail(restOne, 1).equals(tail(restOther, 1))
        || tail(restOne, 1).equals(restOther)
        || restOne.equals(tail(restOther, 1))
        || isSwap(restOne, restOther);
  }

  private static boolean isSwap(String one, String other) {
    return one.length() > 1
        && other.length() == one.length()
        && one.charAt(0) == other.charAt(1)
        && one.charAt(1) == other.charAt(0)
        && tail(one, 2).equals(tail(other, 2));
  }

  private static String tail(String text, int from) {
    return text.substring(Math.min(from, text.length()));
  }
}
