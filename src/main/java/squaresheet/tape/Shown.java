package squaresheet.tape;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How cells show what they hold: number formats told apart, values written for sentences. */
final class Shown {

  private static final int LONG = 60;
  private static final Pattern NOT_A_PART =
      Pattern.compile("\"[^\"]*\"|\\\\.|_.|\\*.|\\[(?!h+\\]|m+\\]|s+\\])[^\\]]*\\]");
  private static final Pattern DEGREES = Pattern.compile("[\u00B0\u00BA\u02DA]");
  private static final Pattern DECIMALS = Pattern.compile("\\.(0+)");
  private static final Pattern FRACTION = Pattern.compile("[#?0]/[#?0-9]");

  /** The day after 31 December 9999, the last one that spreadsheet programs know. */
  private static final double LAST_DAY = 2_958_466;

  private Shown() {}

  /** The letters of the first section of a number format code that stand for parts of a date or a time. */
  private static String parts(String format) {
    String code = format.toLowerCase(Locale.ROOT).replace("general", "").replace("standard", "");
    String bare = NOT_A_PART.matcher(code).replaceAll("");
    int end = bare.indexOf(';');
    return end < 0 ? bare : bare.substring(0, end);
  }

  /** Whether a number is shown as a day. */
  static boolean isDate(Written.Number number) {
    String parts = parts(number.format());
    boolean dated =
        parts.matches(".*[yd].*") || (parts.contains("m") && !parts.matches(".*[hs].*"));
    return dated && number.value() >= 1 && number.value() < LAST_DAY;
  }

  /** Whether a number is shown as a time of day or a span of hours. */
  static boolean isTime(Written.Number number) {
    String parts = parts(number.format());
    boolean timed = parts.matches(".*[hs].*") && !parts.matches(".*[yd].*");
    return timed && number.value() > 0 && number.value() < LAST_DAY;
  }

  static boolean isPercent(String format) {
    return parts(format).contains("%");
  }

  /** Whether a number is shown with the sign of degrees behind it. */
  static boolean isDegrees(String format) {
    return DEGREES.matcher(format).find();
  }

  /** How many decimals a number is shown with whatever it is; 0 where that depends on the number. */
  static int decimals(String format) {
    Matcher zeros = DECIMALS.matcher(parts(format));
    return zeros.find() ? zeros.group(1).length() : 0;
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
