package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** Does a total leave out an amount that stands among those it adds up? */
final class TotalLeavesOutPart implements Check<Addition> {

  private static final CheckInfo INFO = new CheckInfo(
      "total-leaves-out-part", Severity.WARNING, "A total leaves out one of its parts");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Addition total) {
    List<Address> out = total.leftOut().toList();
    boolean few = !out.isEmpty() && out.size() <= 2;
    return few ? Stream.of(says(total, out)) : Stream.empty();
  }

  private static Finding says(Addition total, List<Address> out) {
    Book book = total.book();
    double more = out.stream().mapToDouble(at -> book.number(at).orElse(0)).sum();
    double with = book.number(total.cell().at()).orElse(0) + more;
    Address first = out.get(0);
    String says = "is " + total.cell().shown() + " and leaves out " + first + " ('"
        + total.cell().tab().label(first.ref()) + "', " + Shown.of(book.value(first)) + ")"
        + (out.size() > 1 ? " and " + out.get(1) : "")
        + ", which stands among its parts and goes nowhere else; with it the total makes "
        + Shown.number(with);
    return Says.about(INFO, book, total.cell().at(), new Value.Number(with), says);
  }
}
