package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Is a quantity or a price typed into the estimate instead of read from the takeoff and the list? */
final class LineValueTypedOver implements Check<PricedLine> {

  private static final CheckInfo INFO = new CheckInfo(
      "line-value-typed-over", Severity.WARNING, "A number is typed into the estimate");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(PricedLine line) {
    return Stream.of("line_quantity", "line_price", "line_amount")
        .filter(column -> !line.book().cell(line.at(column)).isFormula())
        .filter(column -> !Words.saysMeasured(
            line.book().tab(line.at(column).sheet()).wordsAbout(line.at(column).ref())))
        .map(column -> says(line, column));
  }

  private static Finding says(PricedLine line, String column) {
    String what = column.substring("line_".length());
    String says = "is a typed " + what + " in the line '" + line.item()
        + "', which no longer follows the takeoff and the price list; put the formula back, or say beside it why";
    return Says.about(INFO, line.book(), line.at(column), says);
  }
}
