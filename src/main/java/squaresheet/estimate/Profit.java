package squaresheet.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import squaresheet.units.Money;
import squaresheet.units.Ratio;

/**
 * How a price comes from a cost. Markup and margin are different numbers: 25 % on a cost of 100 makes 125 as a markup, and
 * 133.33 as a margin. Text form: {@code markup 25%}, {@code margin 20%}.
 */
public sealed interface Profit {

  /** Enough that a price of a thousand million is right to the cent. */
  int DECIMALS = 12;

  /** The ratio as it was stated. */
  Ratio stated();

  /** The price, not rounded. */
  Money priceOf(Money cost);

  /** The same as a share of the cost. */
  Markup toMarkup();

  /** The same as a share of the price. */
  Margin toMargin();

  /** Reads the text form, strictly. */
  static Profit parse(String text) {
    String[] words = text.strip().split("\\s+");
    if (words.length == 2 && words[0].equals("markup")) {
      return new Markup(Ratio.parse(words[1]));
    }
    if (words.length == 2 && words[0].equals("margin")) {
      return new Margin(Ratio.parse(words[1]));
    }
    throw new IllegalArgumentException(
        "profit must read like markup 25% or margin 20%, but reads '" + text + "'");
  }

  /**
   * On the cost: price = cost × (1 + markup).
   *
   * @param stated 0 or more
   */
  record Markup(Ratio stated) implements Profit {

    public Markup {
      if (stated.value().signum() < 0) {
        throw new IllegalArgumentException("markup must be 0% or more, but is " + stated);
      }
    }

    @Override
    public Money priceOf(Money cost) {
      return cost.times(BigDecimal.ONE.add(stated.value()));
    }

    @Override
    public Markup toMarkup() {
      return this;
    }

    @Override
    public Margin toMargin() {
      BigDecimal over = BigDecimal.ONE.add(stated.value());
      return new Margin(new Ratio(stated.value().divide(over, DECIMALS, RoundingMode.HALF_UP)));
    }

    @Override
    public String toString() {
      return "markup " + stated;
    }
  }

  /**
   * Of the price: price = cost / (1 − margin).
   *
   * @param stated from 0 up to, not including, 1
   */
  record Margin(Ratio stated) implements Profit {

    public Margin {
      if (stated.value().signum() < 0 || stated.value().compareTo(BigDecimal.ONE) >= 0) {
        throw new IllegalArgumentException(
            "margin must be 0% or more and less than 100%, but is " + stated);
      }
    }

    @Override
    public Money priceOf(Money cost) {
      return cost.dividedBy(BigDecimal.ONE.subtract(stated.value()));
    }

    @Override
    public Markup toMarkup() {
      BigDecimal under = BigDecimal.ONE.subtract(stated.value());
      return new Markup(new Ratio(stated.value().divide(under, DECIMALS, RoundingMode.HALF_UP)));
    }

    @Override
    public Margin toMargin() {
      return this;
    }

    @Override
    public String toString() {
      return "margin " + stated;
    }
  }
}
