package squaresheet.xlsx;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;

/** Days written as ISO 8601 text, which some programs do, as the numbers that other programs keep. */
final class IsoDay {

  private static final LocalDate DAY_0 = LocalDate.of(1899, 12, 30);
  private static final LocalDate DAY_0_OF_1904 = LocalDate.of(1904, 1, 1);
  private static final double SECONDS = 86_400;

  private IsoDay() {}

  /** The number, or not a number where the text is none. */
  static double serial(String text, boolean date1904) {
    try {
      LocalDateTime time = time(text);
      LocalDate zero = date1904 ? DAY_0_OF_1904 : DAY_0;
      long days = ChronoUnit.DAYS.between(zero, time.toLocalDate());
      return days + time.toLocalTime().toNanoOfDay() / 1e9 / SECONDS;
    } catch (DateTimeParseException wrong) {
      return Double.NaN;
    }
  }

  private static LocalDateTime time(String text) {
    if (text.indexOf('T') < 0) {
      return text.indexOf(':') > 0
          ? DAY_0.atTime(LocalTime.parse(text))
          : LocalDate.parse(text).atStartOfDay();
    }
    return text.endsWith("Z") || text.lastIndexOf('+') > 0
        ? OffsetDateTime.parse(text).toLocalDateTime()
        : LocalDateTime.parse(text);
  }
}
