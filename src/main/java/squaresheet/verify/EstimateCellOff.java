package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does a cell between the lines of the estimate and its total hold what the cells just before it make? */
final class EstimateCellOff implements Check<EstimateStep> {

  private static final CheckInfo INFO = new CheckInfo(
      "estimate-cell-off",
      Severity.ERROR,
      "A cell of the estimate is not what the cells before it make");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(EstimateStep step) {
    boolean off = step.isOff()
        && !Words.saysMeasured(
            step.book().tab(step.at().sheet()).wordsAbout(step.at().ref()));
    return off ? Stream.of(says(step)) : Stream.empty();
  }

  private static Finding says(EstimateStep step) {
    String there = step.book()
        .formula(step.at())
        .map(formula -> "=" + formula + ", which makes ")
        .orElse("a typed ");
    String says = "is " + there + Shown.of(step.book().value(step.at())) + " for " + step.called()
        + ", but the cells before it make " + Shown.of(step.should()) + ": " + step.how();
    return Says.about(INFO, step.book(), step.at(), step.should(), says);
  }
}
