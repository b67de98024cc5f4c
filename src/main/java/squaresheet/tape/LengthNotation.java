package squaresheet.tape;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import squaresheet.units.Length;

/**
 * A way in which people write lengths. What one of these writes, {@link TapeReader} reads back as the same length; a
 * length between two marks is to be rounded first.
 */
public enum LengthNotation {
  /** {@code 24' 6 1/2"}. */
  MARKS("'", " ", "\""),
  /** {@code 24'-6 1/2"}. */
  MARKS_AND_HYPHEN("'", "-", "\""),
  /** {@code 24’ 6 1/2”}. */
  CURLY_MARKS("\u2019", " ", "\u201D"),
  /** {@code 24′ 6 1/2″}. */
  PRIMES("\u2032", " ", "\u2033"),
  /** {@code 24 ft 6 1/2 in}. */
  WORDS(" ft", " ", " in"),
  /** {@code 24-6 1/2}. */
  HYPHEN_ALONE("", "-", ""),
  /** {@code 24ft 6½in}. */
  FRACTION_CHARACTERS("ft", " ", "in") {
    @Override
    String inches(long sixtyFourths, Decimals decimals) {
      return Fractions.withCharacter(sixtyFourths);
    }
  },
  /** {@code 24'6.5"}. */
  DECIMAL_INCHES("'", "", "\"") {
    @Override
    String inches(long sixtyFourths, Decimals decimals) {
      return decimals.write(Fractions.decimal(sixtyFourths));
    }
  },
  /** {@code 294 1/2 in}. */
  INCHES_ALONE("", "", " in") {
    @Override
    String size(Length length, Decimals decimals) {
      return Fractions.plain(Fractions.sixtyFourths(length)) + " in";
    }
  },
  /** {@code 294.5"}. */
  DECIMAL_INCHES_ALONE("", "", "\"") {
    @Override
    String size(Length length, Decimals decimals) {
      return decimals.write(Fractions.decimal(Fractions.sixtyFourths(length))) + "\"";
    }
  },
  /** {@code 24.541667 ft}; eight decimals, which tell any two lengths apart. */
  DECIMAL_FEET("", "", " ft") {
    @Override
    String size(Length length, Decimals decimals) {
      return decimals.write(over(length, "304.8", 8)) + " ft";
    }
  },
  /** {@code 7.4803 m}. */
  METRES("", "", " m") {
    @Override
    String size(Length length, Decimals decimals) {
      return decimals.write(over(length, "1000", 10)) + " m";
    }
  },
  /** {@code 748.03 cm}. */
  CENTIMETRES("", "", " cm") {
    @Override
    String size(Length length, Decimals decimals) {
      return decimals.write(over(length, "10", 8)) + " cm";
    }
  },
  /** {@code 7480.3 mm}. */
  MILLIMETRES("", "", " mm") {
    @Override
    String size(Length length, Decimals decimals) {
      return decimals.write(over(length, "1", 7)) + " mm";
    }
  };

  private final String feetMark;
  private final String between;
  private final String inchMark;

  LengthNotation(String feetMark, String between, String inchMark) {
    this.feetMark = feetMark;
    this.between = between;
    this.inchMark = inchMark;
  }

  /**
   * The length in this notation, exactly.
   *
   * @param length any length for metric notations and decimal feet; whole 64ths of an inch for the others
   * @param locale whose decimal mark is used
   * @throws IllegalArgumentException if the notation cannot hold the length exactly
   */
  public String write(Length length, Locale locale) {
    String sign = length.units() < 0 ? "-" : "";
    return sign + size(length.abs(), Decimals.of(locale));
  }

  String size(Length length, Decimals decimals) {
    long marks = Fractions.sixtyFourths(length);
    long foot = 12 * 64;
    return marks / foot + feetMark + between + inches(marks % foot, decimals) + inchMark;
  }

  String inches(long sixtyFourths, Decimals decimals) {
    return Fractions.plain(sixtyFourths);
  }

  private static BigDecimal over(Length length, String millimetres, int places) {
    BigDecimal unit = new BigDecimal(millimetres).multiply(BigDecimal.valueOf(320));
    return BigDecimal.valueOf(length.units()).divide(unit, places, RoundingMode.HALF_UP);
  }
}
