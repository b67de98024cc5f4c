package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does a run of one formula hold a typed number that is right today and will stay behind tomorrow? */
final class TypedOverFormulaLatent implements Check<Fill> {

  private static final CheckInfo INFO = new CheckInfo(
      "typed-over-formula-latent",
      Severity.NOTE,
      "A number was typed over a formula; it is still its value");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Fill fill) {
    return fill.isSound()
        ? TypedInRun.in(fill).filter(TypedInRun::isRight).map(typed -> says(fill, typed))
        : Stream.empty();
  }

  private static Finding says(Fill fill, TypedInRun typed) {
    String says = "is a typed " + Shown.number(typed.value())
        + ", which is what the formula of " + fill.others()
        + " makes today; it will stay behind when an input changes: put ="
        + fill.wanted(typed.along());
    return Says.about(INFO, fill.book(), fill.at(typed.along()), typed.expected(), says)
        .with(fill.fix(typed.along()));
  }
}
