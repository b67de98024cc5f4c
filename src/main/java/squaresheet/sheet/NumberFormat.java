package squaresheet.sheet;

import java.util.Locale;

/** What a number format code shows: a date, a time, a percentage. */
final class NumberFormat {

  private NumberFormat() {}

  /** Whether the code shows a date or a time. */
  static boolean isDate(String code) {
    String bare = bare(code);
    return !bare.equals("general") && bare.chars().anyMatch(letter -> "ymdhs".indexOf(letter) >= 0);
  }

  /** Whether the code shows hundredths. */
  static boolean isPercent(String code) {
    return bare(code).indexOf('%') >= 0;
  }

  /** The first section without literal text, colours and conditions; elapsed hours are kept. */
  private static String bare(String code) {
    StringBuilder kept = new StringBuilder();
    String lower = code.toLowerCase(Locale.ROOT);
    for (int i = 0; i < lower.length(); i++) {
      char at = lower.charAt(i);
      if (at == ';') {
        break;
      } else if (at == '"' || at == '[') {
        int end = lower.indexOf(at == '"' ? '"' : ']', i + 1);
        end = end < 0 ? lower.length() : end;
        kept.append(elapsed(lower.substring(i, Math.min(end + 1, lower.length()))));
        i = end;
      } else if (at == '\\' || at == '_' || at == '*') {
        i++;
      } else {
        kept.append(at);
      }
    }
    return kept.toString();
  }

  private static String elapsed(String bracketed) {
    return bracketed.matches("\\[(h+|m+|s+)]") ? "h" : "";
  }
}
