package squaresheet.estimate;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import squaresheet.units.Money;
import squaresheet.units.Ratio;

/**
 * A sales tax as a jurisdiction levies it. Which categories it taxes is a matter of local law; ask whoever does the books.
 *
 * @param rate 0 or more
 * @param taxed the categories it taxes
 * @param rounding where the cents are rounded
 */
public record Tax(Ratio rate, Set<Category> taxed, RoundingPoint rounding) {

  public Tax {
    if (rate.value().signum() < 0) {
      throw new IllegalArgumentException("tax rate must be 0% or more, but is " + rate);
    }
    if (taxed.contains(Category.TAX) || taxed.contains(Category.DISCOUNT)) {
      throw new IllegalArgumentException(
          "tax is not levied on tax or discount, but is said to be on " + taxed);
    }
    EnumSet<Category> inOrder = EnumSet.noneOf(Category.class);
    inOrder.addAll(taxed);
    taxed = java.util.Collections.unmodifiableSet(inOrder);
  }

  /** No tax at all. */
  public static Tax none() {
    return new Tax(Ratio.ZERO, Set.of(), RoundingPoint.INVOICE);
  }

  /** Where the cents of a tax are rounded, half up. */
  public enum RoundingPoint {
    /** On every line; the tax is the sum of the rounded. */
    LINE,
    /** Once, on the sum. */
    INVOICE;

    @Override
    public String toString() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** For people: {@code 7.25% on material, rounded by invoice}. */
  @Override
  public String toString() {
    String on = taxed.stream()
        .map(Category::toString)
        .collect(java.util.stream.Collectors.joining(" and "));
    return rate + " on " + (on.isEmpty() ? "nothing" : on) + ", rounded by " + rounding;
  }

  /** The tax on these amounts, rounded to the cent at the given point. */
  public Money on(List<Money> amounts, String currency, RoundingPoint point) {
    Money sum = Money.zero(currency);
    for (Money amount : amounts) {
      Money each = amount.times(rate);
      sum = sum.plus(point == RoundingPoint.LINE ? each.toCents() : each);
    }
    return sum.toCents();
  }
}
