package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;

/** Is a cell of a sum added once more beside it? */
final class TermAddedAfterSum implements Check<SumCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "term-added-after-sum", Severity.ERROR, "A cell is added again beside the sum it is part of");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(SumCell sum) {
    List<Cells> again = plusTerms(sum.formula().tree())
        .filter(term -> term instanceof Node.Reference)
        .flatMap(term -> sum.formula().cells(term).stream())
        .filter(cells -> cells.isOne() && sum.cells().contains(cells.first()))
        .filter(cells -> sum.book().number(cells.first()).orElse(0) != 0)
        .toList();
    boolean beside = Nodes.terms(sum.formula().tree()).contains(sum.call());
    return beside ? again.stream().limit(1).map(cells -> says(sum, cells)) : Stream.empty();
  }

  /** The terms that are added; a cell taken off again is taken off on purpose. */
  private static Stream<Node> plusTerms(Node node) {
    if (node instanceof Node.Binary binary && binary.operator() == Node.Operator.PLUS) {
      return Stream.concat(plusTerms(binary.left()), plusTerms(binary.right()));
    }
    return node instanceof Node.Binary binary && binary.operator() == Node.Operator.MINUS
        ? plusTerms(binary.left())
        : Stream.of(node);
  }

  private static Finding says(SumCell sum, Cells again) {
    double now = sum.book().number(sum.formula().at()).orElse(0);
    double term = sum.book().number(again.first()).orElse(0);
    String says = "is " + sum.formula().shown() + ": " + again.first().ref()
        + " is part of " + sum.cells().block() + " and added again; once makes "
        + Shown.number(now - term);
    return Says.about(INFO, sum.book(), sum.formula().at(), new Value.Number(now - term), says);
  }
}
