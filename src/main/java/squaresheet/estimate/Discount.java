package squaresheet.estimate;

import squaresheet.units.Money;
import squaresheet.units.Ratio;

/**
 * What is taken off a price: a share of it and an amount, either of which may be nothing.
 *
 * @param share from 0 to 1
 * @param amount 0 or more
 * @param beforeTax whether the tax is levied on what is left, or on the price before
 */
public record Discount(Ratio share, Money amount, boolean beforeTax) {

  public Discount {
    if (share.value().signum() < 0 || share.value().compareTo(java.math.BigDecimal.ONE) > 0) {
      throw new IllegalArgumentException("discount must be 0% to 100%, but is " + share);
    }
    if (amount.amount().signum() < 0) {
      throw new IllegalArgumentException("discount must be 0 or more, but is " + amount);
    }
  }

  /** Nothing off. */
  public static Discount none(String currency) {
    return new Discount(Ratio.ZERO, Money.zero(currency), true);
  }

  /** What comes off so much, rounded half up to the cent. */
  public Money off(Money price) {
    return price.times(share).plus(amount).toCents();
  }
}
