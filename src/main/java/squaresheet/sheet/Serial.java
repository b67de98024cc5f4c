package squaresheet.sheet;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/** Dates as numbers: days since the workbook's day 0. */
final class Serial {

  /** Day 0 for numbers from 61 up; below, the 29 February 1900 that never was shifts days by one. */
  private static final LocalDate DAY_0 = LocalDate.of(1899, 12, 30);

  private static final LocalDate DAY_0_OF_1904 = LocalDate.of(1904, 1, 1);
  private static final int MARCH_1900 = 61;
  /** 31 December 9999 in the 1900 system. */
  private static final double LAST = 2_958_466;

  private static final double MILLISECONDS = 86_400_000.0;

  private Serial() {}

  static Optional<LocalDateTime> date(double serial, boolean date1904) {
    if (!(serial >= 0) || serial >= LAST) {
      return Optional.empty();
    }
    long days = (long) Math.floor(serial);
    long milliseconds = Math.round((serial - days) * MILLISECONDS);
    LocalDate zero = date1904 ? DAY_0_OF_1904 : DAY_0;
    long shift = !date1904 && days < MARCH_1900 ? 1 : 0;
    return Optional.of(
        zero.plusDays(days + shift).atStartOfDay().plusNanos(milliseconds * 1_000_000));
  }
}
