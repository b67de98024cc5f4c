package squaresheet.xlsx;

/** Reads numbers as cells spell them; the common short ones without a detour through text. */
final class Digits {

  /** Powers of ten that a double holds exactly. */
  private static final double[] TENS = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17,
    1e18, 1e19, 1e20, 1e21, 1e22
  };

  private static final long EXACT = 1L << 53;

  private Digits() {}

  /** The number, rounded as {@link Double#parseDouble} does; not a number where the characters spell none. */
  static double parse(char[] from, int start, int length) {
    int end = start + length;
    int at = start;
    boolean minus = at < end && from[at] == '-';
    at += minus ? 1 : 0;
    long digits = 0;
    int count = 0;
    int decimals = -1;
    for (; at < end; at++) {
      char c = from[at];
      if (c >= '0' && c <= '9' && digits < EXACT / 10) {
        digits = digits * 10 + (c - '0');
        count++;
        decimals += decimals >= 0 ? 1 : 0;
      } else if (c == '.' && decimals < 0) {
        decimals = 0;
      } else {
        return slowly(from, start, length);
      }
    }
    if (count == 0 || decimals >= TENS.length) {
      return slowly(from, start, length);
    }
    double value = decimals > 0 ? digits / TENS[decimals] : digits;
    return minus ? -value : value;
  }

  private static double slowly(char[] from, int start, int length) {
    return parse(new String(from, start, length));
  }

  static double parse(String text) {
    String bare = text.strip();
    char last = bare.isEmpty() ? 'x' : bare.charAt(bare.length() - 1);
    if (last != '.' && (last < '0' || last > '9')) {
      return Double.NaN;
    }
    try {
      return Double.parseDouble(bare);
    } catch (NumberFormatException wrong) {
      return Double.NaN;
    }
  }
}
