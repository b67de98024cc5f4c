package squaresheet.verify;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** Does a total add up a subtotal together with what is already inside it? */
final class TotalIncludesSubtotal implements Check<SumCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "total-includes-subtotal", Severity.ERROR, "A total counts a subtotal and its parts");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(SumCell sum) {
    if (sum.isSubtotal()) {
      return Stream.empty();
    }
    List<Address> inner = sum.book()
        .links()
        .formulasIn(sum.cells())
        .filter(cell -> addsUpWithin(sum, cell))
        .sorted(Comparator.comparing(Address::ref))
        .filter(cell -> sum.book().number(cell).orElse(0) != 0)
        .toList();
    return inner.isEmpty() ? Stream.empty() : Stream.of(says(sum, inner));
  }

  /** Whether the cell adds up two or more cells of the same block. */
  private static boolean addsUpWithin(SumCell sum, Address cell) {
    Node tree = sum.book().formula(cell).orElseThrow().tree();
    List<Cells> reads = sum.book().links().reads(cell);
    long within = reads.stream().mapToLong(sum.cells()::sharedWith).sum();
    long all = reads.stream().mapToLong(Cells::size).sum();
    boolean plus = Nodes.terms(tree).stream().allMatch(term -> term instanceof Node.Reference)
        && !Nodes.any(
            tree,
            node -> node instanceof Node.Binary binary && binary.operator() == Node.Operator.MINUS);
    boolean adds = plus || Nodes.isCall(tree, "SUM", "SUBTOTAL");
    return adds && within >= 2 && within == all;
  }

  private static Finding says(SumCell sum, List<Address> inner) {
    double twice =
        inner.stream().mapToDouble(cell -> sum.book().number(cell).orElse(0)).sum();
    double now = sum.book().number(sum.formula().at()).orElse(0);
    String says = "adds up " + sum.cells().block() + ", in which "
        + inner.get(0).ref()
        + " already adds up other cells of it, so that they count twice; without "
        + (inner.size() == 1 ? "it" : "such subtotals") + " it makes " + Shown.number(now - twice);
    return Says.about(INFO, sum.book(), sum.formula().at(), new Value.Number(now - twice), says);
  }
}
