package squaresheet.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/**
 * An amount of money in one currency: decimal, never a double, and not rounded until it is asked to be.
 *
 * <p>Text form: {@code USD 1234.56}.
 */
public final class Money implements Comparable<Money> {

  private final BigMoney amount;

  private Money(BigMoney amount) {
    this.amount = amount;
  }

  /**
   * An amount of the currency with the given ISO 4217 code.
   *
   * @throws IllegalArgumentException if there is no such currency
   */
  public static Money of(String currency, BigDecimal amount) {
    return new Money(BigMoney.of(known(currency), amount));
  }

  private static CurrencyUnit known(String code) {
    try {
      return CurrencyUnit.of(code);
    } catch (IllegalCurrencyException unknown) {
      throw new IllegalArgumentException(
          "a currency must be three letters of ISO 4217, such as USD, but is '" + code + "'",
          unknown);
    }
  }

  /** Nothing, in the currency with the given ISO 4217 code. */
  public static Money zero(String currency) {
    return of(currency, BigDecimal.ZERO);
  }

  /**
   * Reads the text form, strictly.
   *
   * @throws IllegalArgumentException with a sentence, if the text is not one
   */
  public static Money parse(String text) {
    try {
      return new Money(BigMoney.parse(text));
    } catch (RuntimeException unreadable) {
      throw new IllegalArgumentException(
          "money must read like USD 1234.56, but reads '" + text + "'", unreadable);
    }
  }

  /** The ISO 4217 code. */
  public String currency() {
    return amount.getCurrencyUnit().getCode();
  }

  /** The decimal amount, unrounded. */
  public BigDecimal amount() {
    return amount.getAmount();
  }

  /** The sum; both must be of one currency. */
  public Money plus(Money other) {
    return new Money(amount.plus(like(other)));
  }

  /** The difference; both must be of one currency. */
  public Money minus(Money other) {
    return new Money(amount.minus(like(other)));
  }

  private BigMoney like(Money other) {
    if (!currency().equals(other.currency())) {
      throw new IllegalArgumentException("cannot mix currencies: " + other + " with " + this);
    }
    return other.amount;
  }

  /** This amount times a plain number, unrounded. */
  public Money times(BigDecimal factor) {
    return new Money(amount.multipliedBy(factor));
  }

  /** This amount times a ratio, unrounded. */
  public Money times(Ratio ratio) {
    return times(ratio.value());
  }

  /** This amount over a plain number, to 12 decimals. */
  public Money dividedBy(BigDecimal divisor) {
    BigDecimal quotient = amount.getAmount().divide(divisor, 12, RoundingMode.HALF_UP);
    return new Money(BigMoney.of(amount.getCurrencyUnit(), quotient));
  }

  /** Rounded half up (away from zero) to the currency's smallest coin, the cent. */
  public Money toCents() {
    int places = amount.getCurrencyUnit().getDecimalPlaces();
    return new Money(amount.withScale(places, RoundingMode.HALF_UP));
  }

  /** This amount, taken the other way. */
  public Money negated() {
    return new Money(amount.negated());
  }

  /** Whether this is nothing. */
  public boolean isZero() {
    return amount.isZero();
  }

  /** For people: rounded to the cent, with thousands apart, {@code 1,234.56 USD}. */
  public String show() {
    int places = amount.getCurrencyUnit().getDecimalPlaces();
    return String.format(
        java.util.Locale.ROOT, "%,." + places + "f %s", toCents().amount(), currency());
  }

  @Override
  public int compareTo(Money other) {
    return amount.compareTo(like(other));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Money money
        && currency().equals(money.currency())
        && amount.isEqual(money.amount);
  }

  @Override
  public int hashCode() {
    return amount.getAmount().stripTrailingZeros().hashCode() * 31 + currency().hashCode();
  }

  @Override
  public String toString() {
    return currency() + " " + amount.getAmount().toPlainString();
  }
}
