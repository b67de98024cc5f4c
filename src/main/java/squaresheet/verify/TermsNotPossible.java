package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Can the terms be what they are typed as? */
final class TermsNotPossible implements Check<EstimateCells> {

  private static final CheckInfo INFO =
      new CheckInfo("terms-not-possible", Severity.ERROR, "The terms of the estimate cannot be");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(EstimateCells cells) {
    try {
      cells.terms();
      return Stream.empty();
    } catch (IllegalArgumentException impossible) {
      return Stream.of(Says.about(
          INFO,
          cells.book(),
          cells.at("profit_rate", 0).orElse(cells.at("terms_currency", 0).orElseThrow()),
          String.valueOf(impossible.getMessage())));
    }
  }
}
