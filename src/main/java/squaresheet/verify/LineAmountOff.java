package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is the amount of a line its quantity times its price, to the cent? */
final class LineAmountOff implements Check<PricedLine> {

  private static final CheckInfo INFO = new CheckInfo(
      "line-amount-off", Severity.ERROR, "A line is not its quantity times its price");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(PricedLine line) {
    boolean off = line.isCost() && !line.isExtended();
    return off ? Stream.of(says(line)) : Stream.empty();
  }

  private static Finding says(PricedLine line) {
    String says = "is " + line.amount().show() + " for '" + line.item() + "', but "
        + Shown.number(line.number("line_quantity").doubleValue()) + " times "
        + Shown.number(line.number("line_price").doubleValue()) + " is "
        + line.extended().show();
    return Says.about(
        INFO, line.book(), line.at("line_amount"), PricedLine.value(line.extended()), says);
  }
}
