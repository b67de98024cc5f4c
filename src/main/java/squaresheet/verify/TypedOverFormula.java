package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Does a run of one formula hold a typed number that the formula would not give? */
final class TypedOverFormula implements Check<Fill> {

  private static final CheckInfo INFO = new CheckInfo(
      "typed-over-formula",
      Severity.ERROR,
      "A number was typed over a formula and is not its value");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Fill fill) {
    return fill.isSound()
        ? TypedInRun.in(fill).filter(typed -> !typed.isRight()).map(typed -> says(fill, typed))
        : Stream.empty();
  }

  private static Finding says(Fill fill, TypedInRun typed) {
    Value expected = typed.expected();
    String says = "is a typed " + Shown.number(typed.value()) + ", but " + fill.others()
        + " have the formula " + "=" + fill.wanted(typed.along()) + " here, which makes "
        + Shown.of(expected);
    return Says.about(INFO, fill.book(), fill.at(typed.along()), expected, says)
        .with(fill.fix(typed.along()));
  }
}
