package squaresheet.verify;

import java.util.Locale;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;

/** Is a total plan area multiplied by the plain average of different pitch factors? */
final class AverageOfFactors implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "average-of-factors", Severity.WARNING, "A total is taken times an average factor");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return Nodes.factors(cell.tree()).stream()
        .filter(factor -> Nodes.isCall(factor, "AVERAGE"))
        .flatMap(factor -> ((Node.Call) factor).arguments().stream())
        .flatMap(argument -> cell.cells(argument).stream())
        .filter(block -> isFactors(cell, block) && Nodes.factors(cell.tree()).size() > 1)
        .limit(1)
        .map(block -> says(cell, block));
  }

  private static boolean isFactors(FormulaCell cell, Cells block) {
    double[] values =
        block.each().mapToDouble(at -> cell.book().number(at).orElse(0)).toArray();
    boolean factors = java.util.Arrays.stream(values).allMatch(value -> value >= 1 && value <= 2.3);
    boolean differ =
        java.util.Arrays.stream(values).anyMatch(value -> !Shown.same(value, values[0]));
    boolean headed = cell.book()
        .tab(block.sheet())
        .headings(block.block().first())
        .toLowerCase(Locale.ROOT)
        .contains("factor");
    return factors && differ && headed;
  }

  private static Finding says(FormulaCell cell, Cells block) {
    String says = "takes the plain average of the factors in " + block.block()
        + ", in which a dormer weighs as much as the main roof; multiply each plane by its own factor and add up";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
