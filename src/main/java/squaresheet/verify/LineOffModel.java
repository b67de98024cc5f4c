package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does a line of the estimate take another quantity, price or category than the takeoff and the lists give it? */
final class LineOffModel implements Check<ModelledLine> {

  private static final CheckInfo INFO = new CheckInfo(
      "line-off-model",
      Severity.WARNING,
      "A line is not what the takeoff, the prices and the rates make of it");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(ModelledLine line) {
    return Stream.of("line_quantity", "line_price", "line_category")
        .filter(column -> isFollowing(line, column) && !line.isRight(column))
        .filter(column -> !Words.saysMeasured(
            line.book().tab(line.at(column).sheet()).wordsAbout(line.at(column).ref())))
        .map(column -> says(line, column));
  }

  /** A number typed over is told by another check; a category decides what is taxed, typed or not. */
  private static boolean isFollowing(ModelledLine line, String column) {
    return column.equals("line_category") || line.book().cell(line.at(column)).isFormula();
  }

  private static Finding says(ModelledLine line, String column) {
    String what = column.substring("line_".length());
    String says = "is a " + what + " of " + Shown.of(line.own(column)) + " in the line '"
        + line.line().item() + "', but the takeoff, the prices and the rates give it "
        + Shown.of(line.should(column)) + "; put the formula back, or say beside it why";
    return Says.about(INFO, line.book(), line.at(column), line.should(column), says)
        .worth(line.worth(column));
  }
}
