package squaresheet.product;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A weight, as printed on a wrapper or allowed by a container.
 *
 * <p>Range: 0 (also: not stated) and up. Text form: {@code 68 lb}.
 *
 * @param pounds the weight in pounds, without trailing zeros
 */
public record Weight(BigDecimal pounds) implements Comparable<Weight> {

  /** No weight, or none stated. */
  public static final Weight ZERO = new Weight(BigDecimal.ZERO);

  /** Kilograms in a pound, exact by the international agreement of 1959 (NIST SP 811, appendix B.8). */
  private static final BigDecimal KILOGRAMS = new BigDecimal("0.45359237");

  private static final int DECIMALS = 9;

  public Weight {
    if (pounds.signum() < 0) {
      throw new IllegalArgumentException(
          "weight must be 0 lb or more, but is " + pounds.toPlainString() + " lb");
    }
    pounds = pounds.stripTrailingZeros();
    pounds = pounds.scale() < 0 ? pounds.setScale(0) : pounds;
  }

  /** The weight of so many pounds. */
  public static Weight ofPounds(double pounds) {
    return new Weight(BigDecimal.valueOf(pounds));
  }

  /** The weight of so many kilograms, to a thousand-millionth of a pound. */
  public static Weight nearestKilograms(BigDecimal kilograms) {
    return new Weight(kilograms.divide(KILOGRAMS, DECIMALS, RoundingMode.HALF_UP));
  }

  /** Reads the text form, strictly. */
  public static Weight parse(String text) {
    if (!text.matches("\\d+(\\.\\d+)? lb")) {
      throw new IllegalArgumentException("weight must read like 68 lb, but reads '" + text + "'");
    }
    return new Weight(new BigDecimal(text.substring(0, text.length() - " lb".length())));
  }

  /** So many times this weight. */
  public Weight times(double count) {
    return ofPounds(pounds.doubleValue() * count);
  }

  /** This weight in kilograms. */
  public double toKilograms() {
    return pounds.multiply(KILOGRAMS).doubleValue();
  }

  /** Whether there is no weight, or none stated. */
  public boolean isZero() {
    return pounds.signum() == 0;
  }

  @Override
  public int compareTo(Weight other) {
    return pounds.compareTo(other.pounds);
  }

  @Override
  public String toString() {
    return pounds.toPlainString() + " lb";
  }
}
