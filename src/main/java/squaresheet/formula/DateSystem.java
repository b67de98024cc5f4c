package squaresheet.formula;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** How a workbook counts days. */
public enum DateSystem {
  /** 1 January 1900 is 1, and 29 February 1900, which never was, is 60. */
  FROM_1900(LocalDate.of(1899, 12, 31)),
  /** 1 January 1904 is 0. */
  FROM_1904(LocalDate.of(1904, 1, 1));

  /** The serial of the day that never was (ECMA-376 keeps it for legacy reasons). */
  static final int LEAP_BUG = 60;

  private final LocalDate zero;

  DateSystem(LocalDate zero) {
    this.zero = zero;
  }

  /**
   * The serial number of a day. Days before the system began get a negative number, counted so that they are as far from
   * today as they were.
   */
  public long serial(LocalDate day) {
    long days = ChronoUnit.DAYS.between(zero, day);
    if (this == FROM_1904) {
      return days;
    }
    return days >= LEAP_BUG || days < 0 ? days + 1 : days;
  }

  /** The day of a serial number; serial 60 of the 1900 system gives 28 February 1900, the last real day before it. */
  public LocalDate day(double serial) {
    long whole = (long) Math.floor(serial);
    return zero.plusDays(this == FROM_1900 && whole >= LEAP_BUG ? whole - 1 : whole);
  }
}
