package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Was a rule edited in this workbook, with another value than the rulebook's? */
final class RuleChangedHere implements Check<Modelled> {

  private static final CheckInfo INFO = new CheckInfo(
      "rule-changed-here",
      Severity.WARNING,
      "A rule was edited in this workbook and gives another value");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Modelled cell) {
    boolean edited = cell.isFormula()
        && cell.isEdited()
        && (cell.isWrongItself() || !cell.own().isChecked())
        && cell.slip().isEmpty();
    return edited ? Stream.of(says(cell)) : Stream.empty();
  }

  private static Finding says(Modelled cell) {
    String says = cell.called() + " comes to " + Shown.of(cell.own())
        + " by a formula edited here, the rulebook makes "
        + Shown.of(cell.should()) + Slips.difference(cell)
        + "; if it is meant so, write it on the sheet Own rules too";
    return cell.says(INFO, says);
  }
}
