package squaresheet.verify;

import java.math.BigDecimal;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Do the shares of the payments make one hundred percent? */
final class PaymentSharesOff implements Check<EstimateCells> {

  private static final CheckInfo INFO = new CheckInfo(
      "payment-shares-off", Severity.ERROR, "The payment shares do not make the whole");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(EstimateCells cells) {
    BigDecimal sum = BigDecimal.ZERO;
    int rows = cells.book().named("payment_share").map(it -> it.block().rows()).orElse(0);
    for (int row = 0; row < rows; row++) {
      sum = sum.add(cells.number("payment_share", row));
    }
    boolean whole = rows == 0 || sum.signum() == 0 || Shown.same(sum.doubleValue(), 1);
    return whole ? Stream.empty() : Stream.of(says(cells, sum));
  }

  private static Finding says(EstimateCells cells, BigDecimal sum) {
    String says = "the shares of the payments add up to " + Shown.number(sum.doubleValue() * 100)
        + " percent, but must make 100, or the last payment takes up the difference unseen";
    return Says.about(INFO, cells.book(), sum(cells), says);
  }

  /** The sum under the shares; where there is none, the first of them. */
  private static Address sum(EstimateCells cells) {
    Cells shares = cells.book().named("payment_share").orElseThrow();
    Address below = new Address(shares.sheet(), shares.block().last().plus(1, 0));
    return cells.book().formula(below).isPresent() ? below : shares.first();
  }
}
