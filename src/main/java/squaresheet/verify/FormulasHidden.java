package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does a protected sheet hide its formulas from the people who go over it? */
final class FormulasHidden implements Check<Tab> {

  private static final CheckInfo INFO =
      new CheckInfo("formulas-hidden", Severity.NOTE, "Formulas are hidden by protection");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Tab tab) {
    return tab.sheet().hiddenFormula().stream()
        .map(
            ref -> Says.about(
                INFO,
                tab.book(),
                tab.at(ref),
                "is worked out by a formula that the protection of the sheet hides; verify reads it all the same"));
  }
}
