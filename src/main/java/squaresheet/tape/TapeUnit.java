package squaresheet.tape;

import java.math.BigDecimal;

/** The unit that a sheet declares for its bare numbers. */
public enum TapeUnit {
  /** International feet, 304.8 mm. */
  FEET("feet", "304.8", true),
  /** Inches, 25.4 mm. */
  INCHES("inches", "25.4", true),
  /** Metres. */
  METRES("metres", "1000", false),
  /** Millimetres. */
  MILLIMETRES("millimetres", "1", false);

  private final String word;
  private final BigDecimal millimetres;
  private final boolean imperial;

  TapeUnit(String word, String millimetres, boolean imperial) {
    this.word = word;
    this.millimetres = new BigDecimal(millimetres);
    this.imperial = imperial;
  }

  /** The plural word, lower case. */
  public String word() {
    return word;
  }

  /** Whether this is a unit of feet and inches. */
  public boolean isImperial() {
    return imperial;
  }

  /** Millimetres in one of these, exact. */
  BigDecimal millimetres() {
    return millimetres;
  }
}
