package squaresheet.tape;

import java.math.BigDecimal;

/**
 * A number as it was written.
 *
 * @param number the number itself; of {@code 10%} it is 10
 * @param isPercent whether it is so many of a hundred
 * @param of the words behind it, such as {@code layers}, in small letters; empty where there are none
 */
public record Amount(BigDecimal number, boolean isPercent, String of) {

  private static final int PERCENT = 2;

  /** What it comes to: ten percent is 0.10. */
  public BigDecimal value() {
    return isPercent ? number.movePointLeft(PERCENT) : number;
  }
}
