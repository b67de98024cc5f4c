package squaresheet.tape;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Pattern;

/** How cells show what they hold: number formats told apart, values written for sentences. */
final class Shown {

  private static final int LONG = 60;
  private static final Pattern NOT_A_PART =
      Pattern.compile("\"[^\"]*\"|\\\\.|_.|\\*.|\\[(?!h+\\]|m+\\]|s+\\])[^\\]]*\\]");
  private static final Pattern FRACTION = Pattern.compile("[#?0]/[#?0-9]");

  private Shown() {}

  /** The letters of the first section of a number format code that stand for parts of a date or a time. */
  private static String parts(String format) {
    String code = format.toLowerCase(Locale.ROOT).replace("general", "").replace("standard", "");
    String bare = NOT_A_PART.matcher(code).replaceAll("");
    int end = bare.indexOf(';');
    return end < 0 ? bare : bare.substring(0, end);
  }

  /** Whether a format code shows a number as a day. */
  static boolean isDate(String format) {
    String parts = parts(format);
    return parts.matches(".*[yd].*") || (parts.contains("m") && !parts.matches(".*[hs].*"));
  }

  /** Whether a format code shows a number as a time of day or a span of hours. */
  static boolean isTime(String format) {
    String parts = parts(format);
    return parts.matches(".*[hs].*") && !parts.matches(".*[yd].*");
  }

  static boolean isPercent(String format) {
    return parts(format).contains("%");
  }

  static boolean isFraction(String format) {
    return FRACTION.matcher(parts(format)).find();
  }

  /** A number without a needless {@code .0} or exponent. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal decimal = BigDecimal.valueOf(value).stripTrailingZeros();
    return decimal.precision() > 30 || Math.abs(decimal.scale()) > 30
        ? Double.toString(value)
        : decimal.toPlainString();
  }

  /** A text cut to what fits in a sentence. */
  static String text(String text) {
    String line = text.replaceAll("\\p{Cntrl}+", " ").strip();
    return line.length() <= LONG ? line : line.substring(0, LONG) + "…";
  }
}
