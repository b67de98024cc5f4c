package squaresheet.verify;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;

/** Is a rate that is called a margin put on the cost as a markup? */
final class MarkupUsedForMargin implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("markup-used-for-margin", Severity.WARNING, "A margin is added like a markup");

  private static final Pattern MARGIN =
      Pattern.compile("(?<!\\p{L})margin(?!\\p{L})", Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return Nodes.all(cell.tree(), Node.Binary.class)
        .filter(node -> node.operator() == Node.Operator.TIMES)
        .flatMap(node -> Stream.of(node.left(), node.right()))
        .flatMap(side -> rate(cell, side).stream())
        .limit(1)
        .map(rate -> says(cell, rate));
  }

  /** The rate that is added to one in this factor, where its label or the cell's own says margin and not markup. */
  private static Optional<Double> rate(FormulaCell cell, Node factor) {
    if (!(factor instanceof Node.Binary sum) || sum.operator() != Node.Operator.PLUS) {
      return Optional.empty();
    }
    boolean one = sum.left() instanceof Node.Number number && number.value() == 1;
    String called = cell.cells(sum.right())
        .filter(Cells::isOne)
        .map(it -> cell.book().tab(it.sheet()).label(it.block().first()))
        .orElse(cell.label());
    boolean margin =
        MARGIN.matcher(called).find() && !called.toLowerCase(Locale.ROOT).contains("markup");
    double rate =
        Shown.number(cell.book().reckoning().evaluate(sum.right(), cell.at())).orElse(0);
    return one && margin && rate > 0 && rate < 1 ? Optional.of(rate) : Optional.empty();
  }

  private static Finding says(FormulaCell cell, double rate) {
    double now = cell.book().number(cell.at()).orElse(0);
    double cost = now / (1 + rate);
    double price = cost / (1 - rate);
    String says = "is cost times " + Shown.number(1 + rate) + ", which leaves a margin of only "
        + Shown.number(100 * rate / (1 + rate)) + " percent; a margin of "
        + Shown.number(100 * rate)
        + " percent is cost divided by " + Shown.number(1 - rate) + ", " + Shown.number(price);
    return Says.about(INFO, cell.book(), cell.at(), new Value.Number(price), says);
  }
}
