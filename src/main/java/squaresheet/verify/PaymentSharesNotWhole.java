package squaresheet.verify;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** Do the shares of a payment schedule add up to one hundred percent? */
final class PaymentSharesNotWhole implements Check<SumCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "payment-shares-not-whole", Severity.WARNING, "Payments do not add up to the whole");

  private static final Pattern SCHEDULE = Pattern.compile(
      "(?<!\\p{L})(payments?|deposit|instal?lments?|schedule|on completion|on delivery|down payment)(?!\\p{L})",
      Pattern.CASE_INSENSITIVE);

  private static final Pattern SHARES =
      Pattern.compile("share|percent|%", Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(SumCell sum) {
    double total = sum.book().number(sum.formula().at()).orElse(0);
    boolean shares = sum.isColumn()
        && Nodes.isCall(sum.formula().tree(), "SUM")
        && isSchedule(sum)
        && sum.cells().each().allMatch(cell -> isShare(sum, cell));
    boolean whole = Shown.same(total, 1) || Shown.same(total, 100);
    return shares && !whole ? Stream.of(says(sum, total)) : Stream.empty();
  }

  private static boolean isShare(SumCell sum, Address cell) {
    double share = sum.book().number(cell).orElse(-1);
    return sum.tab().isTypedNumber(cell.ref())
        && share > 0
        && share <= 100
        && (share <= 1 || !sum.book().cell(cell).isPercent());
  }

  private static boolean isSchedule(SumCell sum) {
    String heading = sum.tab().headings(sum.ref(sum.first()));
    return SHARES.matcher(heading).find()
        && (SCHEDULE.matcher(heading).find()
            || sum.cells().each().anyMatch(cell -> SCHEDULE
                .matcher(sum.tab().rowText(cell.ref().row()))
                .find()));
  }

  private static Finding says(SumCell sum, double total) {
    boolean hundred = total > 1.5;
    String says = "adds the payments up to " + Shown.number(hundred ? total : total * 100)
        + " percent of the price; they must make 100, or a part is never invoiced";
    return Says.about(
        INFO, sum.book(), sum.formula().at(), new Value.Number(hundred ? 100 : 1), says);
  }
}
