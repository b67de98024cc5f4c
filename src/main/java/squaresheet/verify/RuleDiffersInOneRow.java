package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Was a rule edited in one row only, while its other rows keep the rulebook's formula? */
final class RuleDiffersInOneRow implements Check<Modelled> {

  private static final CheckInfo INFO = new CheckInfo(
      "rule-differs-in-one-row",
      Severity.ERROR,
      "One row of a rule was edited and gives another value");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Modelled cell) {
    boolean odd = cell.isFormula()
        && cell.isEdited()
        && cell.isWrongItself()
        && cell.slip().isEmpty()
        && othersKeepIt(cell)
        && !Words.saysMeasured(
            cell.book().tab(cell.at().sheet()).wordsAbout(cell.at().ref()));
    return odd ? Stream.of(says(cell)) : Stream.empty();
  }

  private static boolean othersKeepIt(Modelled cell) {
    List<Modelled> others = cell.model().cells().values().stream()
        .filter(it -> it.rule().equals(cell.rule()) && it.row() >= 0 && it.row() != cell.row())
        .toList();
    return others.size() >= 2
        && others.stream().filter(Modelled::isEdited).count() * 4 < others.size();
  }

  private static Finding says(Modelled cell) {
    String says = cell.called() + " comes to " + Shown.of(cell.own())
        + ", but the rule of the other rows makes " + Shown.of(cell.should())
        + Slips.difference(cell);
    return cell.says(INFO, says);
  }
}
