package squaresheet.tape;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import squaresheet.units.Pitch;

/** A way in which people write pitches. What one of these writes, {@link TapeReader} reads back as the same pitch. */
public enum PitchNotation {
  /** {@code 6/12}. */
  OVER("/12"),
  /** {@code 6:12}. */
  COLON(":12"),
  /** {@code 6-12}. */
  HYPHEN("-12"),
  /** {@code 6 in 12}. */
  IN(" in 12"),
  /** {@code 6 on 12}. */
  ON(" on 12"),
  /** {@code 6"}. */
  INCHES_PER_FOOT("\""),
  /** {@code 6}; under 1 it is read with a warning. */
  BARE(""),
  /** {@code 26.56505117707799°}, every digit that a double has. */
  DEGREES("\u00B0") {
    @Override
    BigDecimal number(Pitch pitch) {
      return BigDecimal.valueOf(pitch.toDegrees());
    }
  },
  /** {@code 50%}. */
  PERCENT("%") {
    @Override
    BigDecimal number(Pitch pitch) {
      return over12(pitch, 100);
    }
  },
  /** {@code 125:250}, on the metric square. */
  METRIC(":250") {
    @Override
    BigDecimal number(Pitch pitch) {
      return over12(pitch, 250);
    }
  };

  private final String tail;

  PitchNotation(String tail) {
    this.tail = tail;
  }

  /** The pitch in this notation, with the decimal mark of the locale. */
  public String write(Pitch pitch, Locale locale) {
    return Decimals.of(locale).write(number(pitch)) + tail;
  }

  BigDecimal number(Pitch pitch) {
    return pitch.rise();
  }

  /** The rise on another run, with enough decimals to come back to the same rise per 12. */
  private static BigDecimal over12(Pitch pitch, int run) {
    return pitch
        .rise()
        .multiply(BigDecimal.valueOf(run))
        .divide(BigDecimal.valueOf(12), 15, RoundingMode.HALF_UP);
  }
}
