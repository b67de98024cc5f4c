package squaresheet.formula;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the text functions do to texts. */
final class Texts {

  /** Twice what a cell holds, so that nothing that would fit is refused. */
  private static final int MOST = 65_534;

  private Texts() {}

  static String left(String text, int count) {
    return text.substring(0, Math.min(count, text.length()));
  }

  static String right(String text, int count) {
    return text.substring(text.length() - Math.min(count, text.length()));
  }

  static String middle(String text, int start, int count) {
    if (start < 1 || count < 0) {
      throw Signal.VALUE;
    }
    int from = Math.min(start - 1, text.length());
    return text.substring(from, (int) Math.min((long) from + count, text.length()));
  }

  static String replace(String text, int start, int count, String by) {
    if (start < 1 || count < 0) {
      throw Signal.VALUE;
    }
    int from = Math.min(start - 1, text.length());
    int to = (int) Math.min((long) from + count, text.length());
    return text.substring(0, from) + by + text.substring(to);
  }

  static double find(String wanted, String text, int start) {
    int found = start < 1 || start > text.length() + 1 ? -1 : text.indexOf(wanted, start - 1);
    return place(found);
  }

  static double search(String wanted, String text, int start) {
    if (start < 1 || start > text.length() + 1) {
      throw Signal.VALUE;
    }
    return place(Wildcards.of(wanted).find(text, start - 1));
  }

  private static double place(int found) {
    if (found < 0) {
      throw Signal.VALUE;
    }
    return found + 1;
  }

  /** Every occurrence replaced, or only the one of that number where it is not 0. */
  static String substitute(String text, String old, String by, int which) {
    if (which < 0 || old.isEmpty()) {
      return text;
    }
    if (which == 0) {
      requireRoom(text, old, by);
      return text.replace(old, by);
    }
    int at = -1;
    for (int i = 0; i < which; i++) {
      at = text.indexOf(old, at < 0 ? 0 : at + old.length());
      if (at < 0) {
        return text;
      }
    }
    return text.substring(0, at) + by + text.substring(at + old.length());
  }

  /** Refuses what would be far longer than a cell holds before it is made. */
  private static void requireRoom(String text, String old, String by) {
    long most = (long) text.length() / old.length() * by.length();
    if (most > MOST && text.length() + (long) occurrences(text, old) * by.length() > MOST) {
      throw Signal.VALUE;
    }
  }

  private static int occurrences(String text, String old) {
    int count = 0;
    for (int at = text.indexOf(old); at >= 0; at = text.indexOf(old, at + old.length())) {
      count++;
    }
    return count;
  }

  static String proper(String text) {
    Matcher words = Pattern.compile("\\p{L}+").matcher(text);
    return words.replaceAll(
        word -> Matcher.quoteReplacement(word.group().substring(0, 1).toUpperCase(Locale.ROOT)
            + word.group().substring(1).toLowerCase(Locale.ROOT)));
  }

  static double value(Value value) {
    if (value instanceof Value.Truth) {
      throw Signal.VALUE;
    }
    return Coercion.number(value);
  }

  static String character(double code) {
    if (code < 1 || code >= 256) {
      throw Signal.VALUE;
    }
    return String.valueOf((char) code);
  }

  static double code(String text) {
    if (text.isEmpty()) {
      throw Signal.VALUE;
    }
    return text.charAt(0);
  }
}
