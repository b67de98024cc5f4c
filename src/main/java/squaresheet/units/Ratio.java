package squaresheet.units;

import java.math.BigDecimal;

/**
 * A plain ratio such as a waste rate or a tax rate: 0.10 is ten percent.
 *
 * <p>Range: any decimal number; what a use allows, it says itself. Text form: {@code 10%}, {@code 8.25%}.
 *
 * @param value the ratio, without trailing zeros
 */
public record Ratio(BigDecimal value) implements Comparable<Ratio> {

  /** Nothing of it. */
  public static final Ratio ZERO = new Ratio(BigDecimal.ZERO);

  public Ratio {
    value = value.stripTrailingZeros();
    value = value.scale() < 0 ? value.setScale(0) : value;
  }

  /** The ratio of a double, as its shortest decimal. */
  public static Ratio of(double value) {
    return new Ratio(BigDecimal.valueOf(value));
  }

  /** The ratio of a number of percent. */
  public static Ratio ofPercent(BigDecimal percent) {
    return new Ratio(percent.movePointLeft(2));
  }

  /**
   * Reads the text form, strictly.
   *
   * @throws IllegalArgumentException with a sentence, if the text is not one
   */
  public static Ratio parse(String text) {
    if (!text.matches("-?\\d+(\\.\\d+)?%")) {
      throw new IllegalArgumentException(
          "ratio must read like 10% or 8.25%, but reads '" + text + "'");
    }
    return ofPercent(new BigDecimal(text.substring(0, text.length() - 1)));
  }

  /** The ratio as a double. */
  public double toDouble() {
    return value.doubleValue();
  }

  /** Whether this is nothing. */
  public boolean isZero() {
    return value.signum() == 0;
  }

  @Override
  public int compareTo(Ratio other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    BigDecimal percent = value.movePointRight(2).stripTrailingZeros();
    return (percent.scale() < 0 ? percent.setScale(0) : percent).toPlainString() + "%";
  }
}
