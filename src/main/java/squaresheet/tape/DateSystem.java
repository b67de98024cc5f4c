package squaresheet.tape;

import java.time.LocalDate;
import java.util.Optional;

/** The day from which a workbook counts its dates. */
public enum DateSystem {
  /** Day 1 is 1 January 1900, and 29 February 1900 is counted although it never was. */
  SINCE_1900(LocalDate.of(1899, 12, 30)),
  /** Day 0 is 1 January 1904. */
  SINCE_1904(LocalDate.of(1904, 1, 1));

  private final LocalDate origin;

  DateSystem(LocalDate origin) {
    this.origin = origin;
  }

  /** The date of a serial number, from 1 March 1900 on. */
  LocalDate date(double serial) {
    return origin.plusDays((long) Math.floor(serial));
  }

  /** The day that a cell shows, such as {@code 2026-05-04}; nothing where it shows none. */
  public Optional<String> day(Written written) {
    return written instanceof Written.Number number && Shown.isDate(number)
        ? Optional.of(date(number.value()).toString())
        : Optional.empty();
  }
}
