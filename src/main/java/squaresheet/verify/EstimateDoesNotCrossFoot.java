package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.units.Money;

/** Do the sums by category and by cost code each come to the sum of the lines? */
final class EstimateDoesNotCrossFoot implements Check<Priced> {

  private static final CheckInfo INFO = new CheckInfo(
      "estimate-does-not-cross-foot",
      Severity.ERROR,
      "The sums by category or by cost code are not the total");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Priced priced) {
    return Stream.of("category_total", "code_total", "payment_total")
        .filter(name -> priced.cells().at(name, 0).isPresent())
        .filter(name -> !priced.cells().money(name).equals(expected(priced, name)))
        .map(name -> says(priced, name));
  }

  private static Money expected(Priced priced, String name) {
    return name.equals("payment_total")
        ? priced.cells().money("estimate_total")
        : priced.sumOfLines();
  }

  private static Finding says(Priced priced, String name) {
    Money should = expected(priced, name);
    String what = name.equals("payment_total")
        ? "the payments add up to "
        : name.equals("code_total")
            ? "the sums by cost code add up to "
            : "the sums by category add up to ";
    String says = what + priced.cells().money(name).show() + ", but the total is " + should.show()
        + "; a row is missing, typed over, or of a spelling that no line has";
    return Says.about(INFO, priced.book(), priced.at(name), PricedLine.value(should), says);
  }
}
