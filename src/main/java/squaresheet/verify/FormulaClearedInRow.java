package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Does a run of one formula have a gap in a row that is filled in otherwise? */
final class FormulaClearedInRow implements Check<Fill> {

  private static final CheckInfo INFO = new CheckInfo(
      "formula-cleared-in-row", Severity.ERROR, "A formula is missing in one row of a table");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Fill fill) {
    return fill.isSound()
        ? fill.exceptions()
            .filter(along -> fill.cell(along).isBlank() && isMissing(fill, along))
            .mapToObj(along -> says(fill, along))
        : Stream.empty();
  }

  private static boolean isMissing(Fill fill, int along) {
    boolean emptyRow = fill.table().formsAt(along) == 0;
    boolean outside = Words.saysOutside(fill.tab().wordsAbout(fill.ref(along)));
    return !emptyRow
        && !outside
        && fill.expected(along) instanceof Value.Number number
        && number.value() != 0;
  }

  private static Finding says(Fill fill, int along) {
    String says = "is blank, but " + fill.others() + " have a formula here; =" + fill.wanted(along)
        + " makes " + Shown.of(fill.expected(along));
    return Says.about(INFO, fill.book(), fill.at(along), fill.expected(along), says)
        .with(fill.fix(along));
  }
}
