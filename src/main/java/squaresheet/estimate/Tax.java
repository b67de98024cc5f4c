package squaresheet.estimate;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import squaresheet.units.Money;
import squaresheet.units.Ratio;

/**
 * A sales tax as a jurisdiction levies it. Which categories it taxes is a matter of local law; ask whoever does the books.
 *
 * @param rate 0 or more
 * @param taxed the categories it taxes
 * @param free those of the company's own that it does not tax; of ours it is all others
 * @param rounding where the cents are rounded
 */
public record Tax(Ratio rate, Set<Category> taxed, Set<Category> free, RoundingPoint rounding) {

  public Tax {
    if (rate.value().signum() < 0) {
      throw new IllegalArgumentException("tax rate must be 0% or more, but is " + rate);
    }
    if (taxed.contains(Category.Known.TAX) || taxed.contains(Category.Known.DISCOUNT)) {
      throw new IllegalArgumentException(
          "tax is not levied on tax or discount, but is said to be on " + taxed);
    }
    taxed = inOrder(taxed);
    free =
        inOrder(free.stream().filter(Category.Own.class::isInstance).collect(Collectors.toSet()));
    Set<Category> both = new LinkedHashSet<>(taxed);
    both.retainAll(free);
    if (!both.isEmpty()) {
      throw new IllegalArgumentException(
          "a category must be taxed or not, but " + both + " is said to be both");
    }
  }

  private static Set<Category> inOrder(Set<Category> categories) {
    Set<Category> inOrder = new TreeSet<>(Category.order());
    inOrder.addAll(categories);
    return Collections.unmodifiableSet(inOrder);
  }

  /** Whether it is said of a category if it is taxed; of ours always. */
  public boolean knows(Category category) {
    return category instanceof Category.Known
        || taxed.contains(category)
        || free.contains(category);
  }

  /** The categories of the company's own that it knows, in order. */
  public List<Category> own() {
    return Stream.concat(taxed.stream(), free.stream())
        .filter(category -> category instanceof Category.Own)
        .sorted(Category.order())
        .toList();
  }

  /** No tax at all. */
  public static Tax none() {
    return new Tax(Ratio.ZERO, Set.of(), Set.of(), RoundingPoint.INVOICE);
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
