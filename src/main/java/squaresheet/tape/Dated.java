package squaresheet.tape;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.finding.Read;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** Undoes what spreadsheet programs do to a typed 6/12, 6-12 or 6:12: a day or a time of day. */
final class Dated {

  private static final int STEEPEST = 24;
  private static final int RUN = 12;
  private static final String LIKE = "pitch must read like 6/12 or 6:12, but ";

  private static final Pattern DAY_MONTH =
      Pattern.compile("(?<day>\\d{1,2})\\.?[-/. ]?(?<month>\\p{L}{3,9})\\.?(?:[-/. ,]+\\d{2,4})?");
  private static final Pattern MONTH_DAY =
      Pattern.compile("(?<month>\\p{L}{3,9})\\.?[-/. ]?(?<day>\\d{1,2})(?:[-/. ,]+\\d{2,4})?");
  private static final Pattern YEAR_FIRST =
      Pattern.compile("\\d{4}[-/.](?<one>\\d{1,2})[-/.](?<other>\\d{1,2})(?:[t ].*)?");
  private static final Pattern YEAR_LAST =
      Pattern.compile("(?<one>\\d{1,2})[-/.](?<other>\\d{1,2})[-/.](?:\\d{4}|\\d{2})(?: .*)?");
  private static final Pattern TIME = Pattern.compile(
      "(?<hours>\\d{1,2}):(?<minutes>\\d{2})(?::\\d{2}(?: ?[ap]\\.?m\\.?)?| ?[ap]\\.?m\\.?)");

  private Dated() {}

  /** A cell that holds a day where a pitch is wanted; what it must have been is proposed. */
  static Read<Pitch> pitch(Spot spot, LocalDate date) {
    OptionalInt beside = rise(date.getMonthValue(), date.getDayOfMonth());
    boolean ofYear = beside.isEmpty() && date.getDayOfMonth() == 1 && date.getYear() % 100 == RUN;
    OptionalInt rise = ofYear ? OptionalInt.of(date.getMonthValue()) : beside;
    return day(spot, day(date) + " " + date.getYear(), rise);
  }

  /** A text that is a day or a time; empty where it is neither. */
  static Optional<Read<Pitch>> pitchText(Spot spot, String plain, Locale locale) {
    Matcher time = TIME.matcher(plain);
    if (time.matches()) {
      return Optional.of(time(
          spot, Integer.parseInt(time.group("hours")), Integer.parseInt(time.group("minutes"))));
    }
    return named(spot, plain, locale).or(() -> numbered(spot, plain));
  }

  private static Optional<Read<Pitch>> named(Spot spot, String plain, Locale locale) {
    for (Pattern pattern : new Pattern[] {DAY_MONTH, MONTH_DAY}) {
      Matcher parts = pattern.matcher(plain);
      if (parts.matches()) {
        Optional<Month> month = month(parts.group("month"), locale);
        int day = Integer.parseInt(parts.group("day"));
        if (month.isPresent() && day >= 1 && day <= month.get().maxLength()) {
          return Optional.of(day(spot, spot.found(), rise(month.get().getValue(), day)));
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Read<Pitch>> numbered(Spot spot, String plain) {
    for (Pattern pattern : new Pattern[] {YEAR_FIRST, YEAR_LAST}) {
      Matcher parts = pattern.matcher(plain);
      if (parts.matches()) {
        return Optional.of(day(
            spot,
            spot.found(),
            rise(Integer.parseInt(parts.group("one")), Integer.parseInt(parts.group("other")))));
      }
    }
    return Optional.empty();
  }

  private static Optional<Month> month(String name, Locale locale) {
    return Arrays.stream(Month.values())
        .filter(month -> begins(month, name, Locale.ENGLISH) || begins(month, name, locale))
        .findFirst();
  }

  private static boolean begins(Month month, String name, Locale locale) {
    return month.getDisplayName(TextStyle.FULL, locale).toLowerCase(locale).startsWith(name);
  }

  private static Read<Pitch> day(Spot spot, String day, OptionalInt rise) {
    String says = LIKE + "holds the date " + day;
    if (rise.isEmpty()) {
      return spot.refuse(Complaint.PITCH_BECAME_DATE, "", says);
    }
    String typed = rise.getAsInt() + "/12";
    return spot.remark(
        Pitch.of(rise.getAsInt()),
        Complaint.PITCH_BECAME_DATE,
        rise.getAsInt() + ":12",
        says + ", which a spreadsheet program makes of a typed " + typed + "; it must have been "
            + rise.getAsInt() + ":12");
  }

  /** The part beside the 12, whichever of month and day the 12 is. */
  private static OptionalInt rise(int one, int other) {
    int rise = one == RUN ? other : other == RUN ? one : 0;
    return rise >= 1 && rise <= STEEPEST ? OptionalInt.of(rise) : OptionalInt.empty();
  }

  /** A cell that holds a time where a pitch is wanted. */
  static Read<Pitch> pitch(Spot spot, double serial) {
    long minutes = Math.round(serial * 24 * 60);
    return time(spot, (int) (minutes / 60), (int) (minutes % 60));
  }

  private static Read<Pitch> time(Spot spot, int hours, int minutes) {
    String clock = String.format(Locale.ROOT, "%d:%02d", hours, minutes);
    String says = LIKE + "holds the time " + clock;
    if (hours < 1 || minutes < 1 || hours > 2L * minutes) {
      return spot.refuse(Complaint.PITCH_BECAME_TIME, "", says);
    }
    String typed = hours + ":" + minutes;
    return spot.remark(
        Pitch.of(BigDecimal.valueOf(hours), BigDecimal.valueOf(minutes)),
        Complaint.PITCH_BECAME_TIME,
        typed,
        says + ", which a spreadsheet program makes of a typed " + typed + "; it must have been "
            + typed);
  }

  /** A cell that holds a day where a length is wanted; the proposal follows the locale's order of day and month. */
  static Read<Length> length(Spot spot, LocalDate date, Locale locale) {
    int month = date.getMonthValue();
    int day = date.getDayOfMonth();
    int feet = monthFirst(locale) ? month : day;
    int inches = monthFirst(locale) ? day : month;
    String says = "length must read like 24' 6 1/2\" or 7.48 m, but holds the date " + day(date)
        + " " + date.getYear();
    String proposal = inches < 12 ? Length.of(feet, inches).toString() : "";
    String typed = feet + "-" + inches;
    return spot.refuse(
        Complaint.LENGTH_BECAME_DATE,
        proposal,
        proposal.isEmpty()
            ? says
            : says + ", which a spreadsheet program makes of a typed " + typed
                + "; if that was meant, it must be " + proposal);
  }

  private static boolean monthFirst(Locale locale) {
    String pattern = DateTimeFormatterBuilder.getLocalizedDateTimePattern(
        FormatStyle.SHORT, null, IsoChronology.INSTANCE, locale);
    return pattern.indexOf('M') < pattern.indexOf('d');
  }

  private static String day(LocalDate date) {
    return date.getDayOfMonth() + " "
        + date.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }
}
