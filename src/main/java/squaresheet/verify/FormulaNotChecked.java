package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Is a formula written with something this program does not follow? */
final class FormulaNotChecked implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("formula-not-checked", Severity.NOTE, "A formula cannot be worked out here");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    boolean root = cell.value() instanceof Value.NotChecked
        && !cell.book().circular().contains(cell.at())
        && !cell.book().moving().contains(cell.at())
        && !cell.book().isLeft(cell.at())
        && cell.book()
            .links()
            .eachFormulaRead(cell.at())
            .noneMatch(read -> cell.book().value(read) instanceof Value.NotChecked);
    return root ? Stream.of(says(cell)) : Stream.empty();
  }

  private static Finding says(FormulaCell cell) {
    int behind = cell.book().links().dependents(List.of(cell.at())).size();
    String says = "is not checked: " + ((Value.NotChecked) cell.value()).reason()
        + (behind == 0
            ? ""
            : "; neither " + (behind == 1 ? "is" : "are") + " the " + Says.count(behind, "formula")
                + " behind it");
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
