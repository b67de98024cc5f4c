package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Does one row of a run have another formula than the rest, with another value? */
final class OddFormulaInRun implements Check<Fill> {

  private static final CheckInfo INFO = new CheckInfo(
      "odd-formula-in-run", Severity.WARNING, "One formula differs from the others of its column");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Fill fill) {
    return OddInRun.in(fill)
        .filter(odd -> !odd.isNamedElsewhere())
        .filter(odd -> isAFormulaForIt(fill, odd))
        .filter(
            odd -> !Shown.same(fill.expected(odd.along()), fill.book().value(fill.at(odd.along()))))
        .map(OddFormulaInRun::says);
  }

  /** Whether the run's formula reads cells and works in this row: otherwise the row is another sort of item. */
  private static boolean isAFormulaForIt(Fill fill, OddInRun odd) {
    boolean reads = !fill.book().links().reads(fill.at(fill.form().sample())).isEmpty();
    return reads && !(fill.expected(odd.along()) instanceof Value.Fault);
  }

  private static Finding says(OddInRun odd) {
    Fill fill = odd.fill();
    String says = "is =" + odd.formula() + ", but " + fill.others() + " have ="
        + fill.wanted(odd.along()) + " here, which makes " + Shown.of(fill.expected(odd.along()));
    return Says.about(INFO, fill.book(), fill.at(odd.along()), fill.expected(odd.along()), says);
  }
}
