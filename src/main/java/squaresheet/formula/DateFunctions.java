package squaresheet.formula;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** Days as numbers. */
final class DateFunctions {

  /** 31 December 9999 in either system. */
  private static final LocalDate LAST = LocalDate.of(9999, 12, 31);

  private static final long LAST_SERIAL = 2_958_465;
  /** The first whole year of the calendar in use. */
  private static final int GREGORIAN = 1583;

  private DateFunctions() {}

  static List<Spec> specs() {
    List<Spec> specs = new ArrayList<>(List.of(
        new Spec("DATE", 3, 3, "s", DateFunctions::date),
        new Spec(
            "DATEVALUE",
            1,
            1,
            "s",
            it -> Value.of(Math.floor(
                NumberText.date(it.text(0).strip(), it.evaluation().scope().dates())))),
        part("YEAR"),
        part("MONTH"),
        part("DAY"),
        new Spec("WEEKDAY", 1, 2, "s", DateFunctions::weekday),
        new Spec("EDATE", 2, 2, "s", it -> serial(it, day(it, 0).plusMonths(it.whole(1)))),
        new Spec(
            "EOMONTH",
            2,
            2,
            "s",
            it -> serial(it, YearMonth.from(day(it, 0)).plusMonths(it.whole(1)).atEndOfMonth())),
        new Spec(
            "DAYS",
            2,
            2,
            "s",
            it -> Value.of(Math.floor(it.number(0)) - Math.floor(it.number(1))))));
    specs.addAll(changing());
    return specs;
  }

  private static List<Spec> changing() {
    return List.of(
        new Spec("TODAY", 0, 0, "", it -> changes("TODAY")),
        new Spec("NOW", 0, 0, "", it -> changes("NOW")),
        new Spec("RAND", 0, 0, "", it -> changes("RAND")),
        new Spec("RANDBETWEEN", 2, 2, "s", it -> changes("RANDBETWEEN")),
        new Spec("TIME", 3, 3, "s", DateFunctions::time),
        new Spec("HOUR", 1, 1, "s", it -> part(seconds(it) / 3600)),
        new Spec("MINUTE", 1, 1, "s", it -> Value.of((double) (seconds(it) / 60 % 60))),
        new Spec("SECOND", 1, 1, "s", it -> Value.of((double) (seconds(it) % 60))),
        new Spec(
            "CONVERT",
            3,
            3,
            "s",
            it -> Value.of(Conversions.convert(it.number(0), it.text(1), it.text(2)))));
  }

  private static Value changes(String function) {
    throw Signal.notChecked("function " + function + " gives another value at every opening");
  }

  /**
   * Counted from the first of the month, so that 29 February 1900 has its number. Years before 1583 count from 1900, as
   * spreadsheet programs have it; later ones are meant as they are written, as OpenFormula has it.
   */
  private static Value date(Arguments arguments) {
    int year = arguments.whole(0);
    if (year < 0 || year > 9999) {
      throw Signal.NUMBER;
    }
    try {
      LocalDate first = LocalDate.of(year < GREGORIAN ? year + 1900 : year, 1, 1)
          .plusMonths(arguments.whole(1) - 1L);
      long serial = arguments.evaluation().scope().dates().serial(first) + arguments.whole(2) - 1L;
      if ((serial < 0 && year >= 1900) || serial > LAST_SERIAL) {
        throw Signal.NUMBER;
      }
      return Value.of((double) serial);
    } catch (DateTimeException tooFar) {
      throw Signal.NUMBER;
    }
  }

  private static Value serial(Arguments arguments, LocalDate day) {
    long serial = arguments.evaluation().scope().dates().serial(day);
    if (serial < 0 || day.isAfter(LAST)) {
      throw Signal.NUMBER;
    }
    return Value.of((double) serial);
  }

  private static LocalDate day(Arguments arguments, int index) {
    return arguments.evaluation().scope().dates().day(days(arguments, index));
  }

  private static double days(Arguments arguments, int index) {
    double serial = arguments.number(index);
    if (serial < 0 || serial >= 2_958_466) {
      throw Signal.NUMBER;
    }
    return serial;
  }

  private static Spec part(String name) {
    return new Spec(name, 1, 1, "s", it -> {
      double serial = Math.floor(days(it, 0));
      DateSystem system = it.evaluation().scope().dates();
      boolean neverWas = system == DateSystem.FROM_1900 && serial == DateSystem.LEAP_BUG;
      boolean zero = system == DateSystem.FROM_1900 && serial == 0;
      LocalDate day = system.day(serial);
      return Value.of(
          switch (name) {
            case "YEAR" -> zero ? 1900 : day.getYear();
            case "MONTH" -> zero ? 1 : day.getMonthValue();
            default -> neverWas ? 29 : zero ? 0 : day.getDayOfMonth();
          });
    });
  }

  /** Counted from the serial, so that days before the day that never was are one off, as spreadsheets have them. */
  private static Value weekday(Arguments arguments) {
    long serial = (long) Math.floor(days(arguments, 0));
    long shift = arguments.evaluation().scope().dates() == DateSystem.FROM_1900 ? 6 : 5;
    int fromSunday = (int) ((serial + shift) % 7);
    int kind = arguments.whole(1, 1);
    return switch (kind) {
      case 1, 17 -> Value.of(fromSunday + 1);
      case 2, 11 -> Value.of((fromSunday + 6) % 7 + 1);
      case 3 -> Value.of((fromSunday + 6) % 7);
      case 12, 13, 14, 15, 16 -> Value.of((fromSunday + 17 - kind) % 7 + 1);
      default -> throw Signal.NUMBER;
    };
  }

  private static Value time(Arguments arguments) {
    double seconds = arguments.whole(0) * 3600.0 + arguments.whole(1) * 60.0 + arguments.whole(2);
    if (seconds < 0) {
      throw Signal.NUMBER;
    }
    return Value.of(seconds / 86400 % 1);
  }

  private static Value part(long number) {
    return Value.of((double) number);
  }

  private static long seconds(Arguments arguments) {
    double serial = days(arguments, 0);
    return Math.round((serial - Math.floor(serial)) * 86400) % 86400;
  }
}
