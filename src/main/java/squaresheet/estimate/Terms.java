package squaresheet.estimate;

import java.math.BigDecimal;
import java.util.List;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.product.Catalogue;
import squaresheet.units.Ratio;

/**
 * What a company puts on its costs, and how it is paid. Text form: a table of name and value.
 *
 * @param currency the ISO 4217 code
 * @param overhead share of the cost that the company's running takes, 0 or more
 * @param profit what is put on cost and overhead
 * @param discount what is taken off
 * @param tax what is collected for the state
 * @param payments when which share of the contract is due, together 100 %
 * @param codes cost codes for overhead, profit, discount and tax lines
 */
public record Terms(
    String currency,
    Ratio overhead,
    Profit profit,
    Discount discount,
    Tax tax,
    List<Share> payments,
    Codes codes) {

  public Terms {
    if (overhead.value().signum() < 0) {
      throw new IllegalArgumentException("overhead must be 0% or more, but is " + overhead);
    }
    payments = List.copyOf(payments);
    BigDecimal sum = payments.stream()
        .map(share -> share.share().value())
        .reduce(BigDecimal.ZERO, BigDecimal::add);
    if (!payments.isEmpty() && sum.compareTo(BigDecimal.ONE) != 0) {
      throw new IllegalArgumentException(
          "the shares of the payments must total 100%, but total " + new Ratio(sum));
    }
  }

  /**
   * A share of the contract and when it is due.
   *
   * @param when what it falls due on
   * @param share more than 0, up to 1
   */
  public record Share(String when, Ratio share) {

    public Share {
      if (share.value().signum() <= 0) {
        throw new IllegalArgumentException(
            "a payment must be more than 0%, but '" + when + "' is " + share);
      }
    }
  }

  /**
   * The company's codes for what is put on and taken off.
   *
   * @param overhead for overhead
   * @param profit for profit
   * @param discount for discount
   * @param tax for tax
   */
  public record Codes(String overhead, String profit, String discount, String tax) {

    /** No codes. */
    public static Codes none() {
      return new Codes("", "", "", "");
    }
  }

  /** Reads a table of name and value. */
  public static Read<Terms> read(String text, String file) {
    return new TermsReader(file).read(text);
  }

  /** The same of rows that stand elsewhere, such as on a sheet of that file. */
  public static Read<Terms> read(List<Catalogue.Row> rows, Where table, String file) {
    return new TermsReader(file).read(rows, table);
  }
}
