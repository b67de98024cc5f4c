package squaresheet.tape;

import java.math.BigDecimal;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/** Inches in 64ths, written as people write them. */
final class Fractions {

  private static final String CHARACTERS_OF_EIGHTHS = "\u215B\u00BC\u215C\u00BD\u215D\u00BE\u215E";

  private Fractions() {}

  /** The whole 64ths of an inch in a length that falls on one. */
  static long sixtyFourths(Length length) {
    long mark = Graduation.SIXTY_FOURTH.mark().units();
    if (length.units() % mark != 0) {
      throw new IllegalArgumentException(
          "a length in inches must fall on a 64th, but is " + length);
    }
    return length.units() / mark;
  }

  /** {@code 6 1/2}, {@code 6}, {@code 0 1/2}. */
  static String plain(long sixtyFourths) {
    long part = sixtyFourths % 64;
    int shift = Long.numberOfTrailingZeros(part);
    return sixtyFourths / 64 + (part == 0 ? "" : " " + (part >> shift) + "/" + (64 >> shift));
  }

  /** {@code 6½}; a fraction without a character of its own is written {@code 6 1/16}. */
  static String withCharacter(long sixtyFourths) {
    long part = sixtyFourths % 64;
    if (part == 0 || part % 8 != 0) {
      return plain(sixtyFourths);
    }
    return sixtyFourths / 64 + CHARACTERS_OF_EIGHTHS.substring((int) part / 8 - 1, (int) part / 8);
  }

  static BigDecimal decimal(long sixtyFourths) {
    return BigDecimal.valueOf(sixtyFourths).divide(BigDecimal.valueOf(64));
  }
}
