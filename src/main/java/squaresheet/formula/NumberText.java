package squaresheet.formula;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text where a number is wanted: plain numbers, percents, dollars, and dates that read the same in every locale. */
final class NumberText {

  private static final Pattern PLAIN =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");
  private static final Pattern DRESSED =
      Pattern.compile("([+-]?\\$?|\\$[+-])(\\d{1,3}(?:,\\d{3})+|\\d+)(\\.\\d*)?\\s?(%?)");
  private static final Pattern BRACKETS = Pattern.compile("\\((\\$?[\\d.,]+)\\)");
  private static final Pattern FRACTION =
      Pattern.compile("([+-]?)(\\d{1,9}) (\\d{1,4})/(\\d{1,4})");
  /** Numbers in some programs and countries: a minus behind, commas elsewhere than at thousands, other money signs. */
  private static final Pattern LOCAL_NUMBER = Pattern.compile(
      "[\\d.,]+-|\\([\\d.,]+%\\)|[+-]?\\d+(?:,\\d+)+(?:\\.\\d*)?%?|[+-]?[€£¥][+-]?[\\d.,]+|[+-]?[\\d.,]+ ?[€£¥]");

  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
  private static final Pattern NAMED =
      Pattern.compile("(\\d{1,2})[- ]([A-Za-z]{3,9})[- ,]+(\\d{4})");
  private static final Pattern NAMED_FIRST =
      Pattern.compile("([A-Za-z]{3,9}) (\\d{1,2}),? (\\d{4})");
  private static final Pattern LOCAL_DATE = Pattern.compile(
      "(?:0?[1-9]|[12]\\d|3[01]|\\d{4})([/.-])(?:0?[1-9]|[12]\\d|3[01]|\\d{4})(?:\\1(?:\\d{2}|\\d{4}|[1-9]))?");
  private static final Pattern CLOCK =
      Pattern.compile("(\\d{1,2}):(\\d{2})(?::(\\d{2}))?(?: ?([AaPp])[Mm])?");
  /** Dates whose year, or whose reading, is not the same everywhere, and days with a time of day. */
  private static final Pattern LOOSE_DATE = Pattern.compile(
      "(?i)(?:\\d{1,2}[- ]?MONTH(?:[- ,]+\\d{2})?|MONTH[- ]\\d{1,4}(?:, ?\\d{2})?|.*\\d.* \\d{1,2}:\\d{2}.*)"
          .replace("MONTH", "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]{0,6}"));

  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

  /** A longer text is no number that anybody wrote. */
  private static final int LONGEST = 400;

  private NumberText() {}

  /** The number a text stands for, in the 1900 system where it is a date; {@code #VALUE!} where it is none. */
  static double read(String text) {
    String bare = text.strip();
    if (bare.length() > LONGEST) {
      throw Signal.VALUE;
    }
    if (PLAIN.matcher(bare).matches()) {
      return finite(Double.parseDouble(bare));
    }
    Matcher dressed = DRESSED.matcher(bare);
    if (dressed.matches()) {
      return dressed(dressed);
    }
    Matcher brackets = BRACKETS.matcher(bare);
    if (brackets.matches()) {
      return -read(brackets.group(1));
    }
    Matcher fraction = FRACTION.matcher(bare);
    if (fraction.matches()) {
      return fraction(fraction);
    }
    Matcher clock = CLOCK.matcher(bare);
    if (clock.matches()) {
      return clock(clock);
    }
    if (LOCAL_NUMBER.matcher(bare).matches()) {
      throw Signal.notChecked(
          "whether the text '" + text + "' is a number differs between countries");
    }
    return date(bare, DateSystem.FROM_1900);
  }

  /** Whether a text is digits, with at most a sign, a point and an exponent. */
  static boolean isPlain(String text) {
    return PLAIN.matcher(text).matches();
  }

  /** A whole number and a fraction, such as {@code 6 1/2}. */
  private static double fraction(Matcher parts) {
    double under = Double.parseDouble(parts.group(4));
    if (under == 0) {
      throw Signal.VALUE;
    }
    double size = Double.parseDouble(parts.group(2)) + Double.parseDouble(parts.group(3)) / under;
    return parts.group(1).equals("-") ? -size : size;
  }

  private static double finite(double number) {
    if (Double.isInfinite(number)) {
      throw Signal.VALUE;
    }
    return number;
  }

  private static double dressed(Matcher parts) {
    String digits =
        parts.group(2).replace(",", "") + (parts.group(3) == null ? "" : parts.group(3));
    double number = Double.parseDouble(digits) / (parts.group(4).isEmpty() ? 1 : 100);
    return parts.group(1).contains("-") ? -number : number;
  }

  private static double clock(Matcher parts) {
    int hours = Integer.parseInt(parts.group(1));
    if (parts.group(4) != null) {
      if (hours < 1 || hours > 12) {
        throw Signal.VALUE;
      }
      hours = hours % 12 + (parts.group(4).equalsIgnoreCase("p") ? 12 : 0);
    }
    int seconds = parts.group(3) == null ? 0 : Integer.parseInt(parts.group(3));
    return (hours * 3600 + Integer.parseInt(parts.group(2)) * 60 + seconds) / 86400.0;
  }

  /** The serial number of a date as text; {@code #VALUE!} where it is none. */
  static double date(String text, DateSystem system) {
    try {
      Matcher iso = ISO.matcher(text);
      if (iso.matches()) {
        return serial(day(iso.group(1), iso.group(2), iso.group(3)), system);
      }
      Matcher named = NAMED.matcher(text);
      if (named.matches()) {
        return serial(day(named.group(3), month(named.group(2)), named.group(1)), system);
      }
      Matcher first = NAMED_FIRST.matcher(text);
      if (first.matches()) {
        return serial(day(first.group(3), month(first.group(1)), first.group(2)), system);
      }
    } catch (DateTimeException noSuchDay) {
      throw Signal.VALUE;
    }
    if (LOCAL_DATE.matcher(text).matches() || LOOSE_DATE.matcher(text).matches()) {
      throw Signal.notChecked(
          "text '" + text + "' is read as a date in one country and not in another");
    }
    throw Signal.VALUE;
  }

  /** Programs number the days before March 1900 differently. */
  private static double serial(LocalDate day, DateSystem system) {
    long serial = system.serial(day);
    if (system == DateSystem.FROM_1900 ? serial <= DateSystem.LEAP_BUG : serial < 0) {
      throw Signal.notChecked("programs number days before March 1900 differently");
    }
    return serial;
  }

  private static LocalDate day(String year, String month, String day) {
    return LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day));
  }

  private static String month(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    int month = MONTHS.indexOf(lower.substring(0, 3));
    boolean spelledOut = month >= 0
        && (lower.length() == 3 || java.time.Month.of(month + 1).name().equalsIgnoreCase(lower));
    if (!spelledOut) {
      throw Signal.VALUE;
    }
    return String.valueOf(month + 1);
  }
}
