package squaresheet.estimate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import squaresheet.units.Money;
import squaresheet.units.Unit;

/**
 * A line of an estimate.
 *
 * @param category what it is for
 * @param costCode the company's code, or empty
 * @param item what it is
 * @param quantity how much of it
 * @param price of one unit of the quantity
 * @param amount quantity times price, rounded half up to the cent; negative for a discount
 * @param basis where it comes from: a rule and its product, a rate and its band
 */
public record Line(
    Category category,
    String costCode,
    String item,
    Quantity quantity,
    Money price,
    Money amount,
    String basis) {

  public Line {
    if (!amount.equals(amount.toCents())) {
      throw new IllegalArgumentException(
          "the amount of a line must be whole cents, but '" + item + "' is " + amount);
    }
  }

  /**
   * How much, of what.
   *
   * @param number how much
   * @param unit of what
   */
  public record Quantity(BigDecimal number, Unit unit) {

    /** What a cell holds of a number: a quantity worked out in doubles ends there, so that 29.4725 is not a hair less. */
    public static final MathContext CELL = new MathContext(15, RoundingMode.HALF_UP);

    public Quantity {
      number = number.round(CELL);
    }

    /** Once, for the job as a whole. */
    public static Quantity once() {
      return new Quantity(BigDecimal.ONE, Unit.parse("job"));
    }

    /** For people: {@code 12 bundle}, to two decimals. */
    public String show() {
      BigDecimal two = number.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
      return unit.show((two.scale() < 0 ? two.setScale(0) : two).toPlainString());
    }
  }

  /** A line whose amount is its quantity times its price, rounded half up to the cent. */
  static Line extended(
      Category category, String code, String item, Quantity quantity, Money price, String basis) {
    return new Line(
        category, code, item, quantity, price, price.times(quantity.number()).toCents(), basis);
  }
}
