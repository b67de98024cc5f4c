package squaresheet.verify;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;

/** Does a SUBTOTAL above 100 leave out rows that were hidden by hand? */
final class SubtotalDropsHiddenRows implements Check<SumCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "subtotal-drops-hidden-rows", Severity.WARNING, "A total leaves out hidden rows");

  private static final Pattern VISIBLE =
      Pattern.compile("visible|shown|on screen|filtered", Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(SumCell sum) {
    boolean drops = sum.isSubtotal()
        && sum.isColumn()
        && sum.tab().sheet().filter().isEmpty()
        && sum.call().arguments().get(0) instanceof Node.Number number
        && number.value() > 100
        && !VISIBLE.matcher(sum.formula().words()).find();
    return drops && HiddenRows.left(sum) != 0 ? Stream.of(says(sum)) : Stream.empty();
  }

  private static Finding says(SumCell sum) {
    String says = "is " + sum.formula().shown() + ", which leaves out hidden rows with "
        + Shown.number(HiddenRows.left(sum))
        + "; show them, or use SUM if they belong to the total";
    return Says.about(INFO, sum.book(), sum.formula().at(), says);
  }
}
