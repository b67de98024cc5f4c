package squaresheet.sheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The one place where words become such as a file can hold. XML 1.0, 2.2 has no place for control characters, for the
 * noncharacters U+FFFE and U+FFFF, and for one half of a pair alone.
 */
final class FileText {

  private static final Pattern CODE = Pattern.compile("_x([0-9A-Fa-f]{4})_");
  private static final Pattern TO_SPELL = Pattern.compile(
      "_(?=x[0-9A-Fa-f]{4}_)|[\\x00-\\x08\\x0B\\x0C\\x0D\\x0E-\\x1F\\x{FFFE}\\x{FFFF}\\p{Cs}]");
  private static final char REPLACEMENT = '\uFFFD';

  private FileText() {}

  /** The text with a mark in the place of each character that cannot be. */
  static String legible(String text) {
    int at = unfit(text, 0);
    if (at < 0) {
      return text;
    }
    StringBuilder legible = new StringBuilder(text);
    for (; at >= 0; at = unfit(text, at + 1)) {
      legible.setCharAt(at, REPLACEMENT);
    }
    return legible.toString();
  }

  /** Where from there on the first character stands that cannot be; -1 where none does. */
  private static int unfit(String text, int from) {
    for (int at = from; at < text.length(); at++) {
      char it = text.charAt(at);
      if (Character.isHighSurrogate(it)
          && at + 1 < text.length()
          && Character.isLowSurrogate(text.charAt(at + 1))) {
        at++;
      } else if (it < ' '
          ? it != '\t' && it != '\n' && it != '\r'
          : Character.isSurrogate(it) || it >= '\uFFFE') {
        return at;
      }
    }
    return -1;
  }

  /** The text with such characters spelled, so that they read back: {@code _x0007_}, as ECMA-376 Part 1, 22.9.2.19 has it. */
  static String spelled(String text) {
    Matcher found = TO_SPELL.matcher(text);
    return found.find()
        ? found.replaceAll(it -> String.format("_x%04X_", (int) it.group().charAt(0)))
        : text;
  }

  /** The text that was spelled so. */
  static String unspelled(String text) {
    if (text.indexOf("_x") < 0) {
      return text;
    }
    return CODE.matcher(text)
        .replaceAll(code ->
            Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(code.group(1), 16))));
  }
}
