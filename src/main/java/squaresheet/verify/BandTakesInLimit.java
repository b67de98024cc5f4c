package squaresheet.verify;

import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Value;

/** Does a formula double the underlayment at 4:12, where single coverage begins? */
final class BandTakesInLimit implements Check<Underlayment> {

  private static final CheckInfo INFO = new CheckInfo(
      "band-takes-in-limit", Severity.WARNING, "Underlayment is doubled at 4:12 itself");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Underlayment plane) {
    boolean doubled = plane.rise() == 4
        && plane.layers() == 2
        && !Words.saysPolicy(plane.words())
        && !Words.saysFlat(plane.words());
    Optional<Formula> formula = plane.book().formula(plane.at());
    return doubled && formula.filter(BandTakesInLimit::takesInFour).isPresent()
        ? Stream.of(says(plane, formula.get()))
        : Stream.empty();
  }

  /** Whether it asks for at most 4, or 4 at least, with the 4 typed in; a limit in a cell of its own is a stated rule. */
  private static boolean takesInFour(Formula formula) {
    return Nodes.all(formula.tree(), Node.Binary.class)
        .anyMatch(node -> (node.operator() == Node.Operator.AT_MOST && isFour(node.right()))
            || (node.operator() == Node.Operator.AT_LEAST && isFour(node.left())));
  }

  private static boolean isFour(Node node) {
    return node instanceof Node.Number number && number.value() == 4;
  }

  private static Finding says(Underlayment plane, Formula formula) {
    String says = "is =" + formula
        + ", which doubles the underlayment at 4:12; single coverage begins there, so"
        + " the limit is 'less than 4' (IRC R905.2.2)";
    return Says.about(INFO, plane.book(), plane.at(), new Value.Number(1), says);
  }
}
