package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;

/** Is a tax or markup rate added to money like an amount? */
final class RateAddedAsAmount implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("rate-added-as-amount", Severity.WARNING, "A rate is added to an amount");

  /** Beside an amount of this size a ratio is no part of it. */
  private static final double AMOUNT = 10;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    if (!(cell.tree() instanceof Node.Binary)) {
      return Stream.empty();
    }
    List<Node> terms = Nodes.terms(cell.tree());
    boolean amounts = terms.stream()
        .flatMap(term -> RateWords.cell(cell, term).stream())
        .anyMatch(at -> Math.abs(cell.book().number(at).orElse(0)) > AMOUNT);
    return amounts && terms.size() > 1
        ? terms.stream()
            .flatMap(term -> RateWords.rate(cell, term).stream())
            .limit(1)
            .map(rate -> Says.about(
                INFO,
                cell.book(),
                cell.at(),
                "is " + cell.shown() + ", and " + rate + " is the rate '"
                    + RateWords.label(cell.book(), rate)
                    + "', no amount; a rate is multiplied with what it is a share of"))
        : Stream.empty();
  }
}
