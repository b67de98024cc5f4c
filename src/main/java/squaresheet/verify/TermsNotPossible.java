package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.OwnWords;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Can the terms be what they are typed as? */
final class TermsNotPossible implements Check<EstimateCells> {

  private static final CheckInfo INFO =
      new CheckInfo("terms-not-possible", Severity.ERROR, "The terms of the estimate cannot be");

  private static final List<String> TERMS =
      List.of("overhead_rate", "profit_rate", "discount_share", "discount_amount", "tax_rate");

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
      return Stream.of(Says.about(INFO, cells.book(), culprit(cells), OwnWords.of(impossible)));
    }
  }

  /** The term without which the others can be; where no single one is, the first of them. */
  private static Address culprit(EstimateCells cells) {
    return TERMS.stream()
        .filter(name -> canBe(cells, name))
        .flatMap(name -> cells.at(name, 0).stream())
        .findFirst()
        .orElseGet(() -> cells.at("terms_currency", 0).orElseThrow());
  }

  private static boolean canBe(EstimateCells cells, String without) {
    try {
      cells.termsWithout(without);
      return true;
    } catch (IllegalArgumentException stillImpossible) {
      return false;
    }
  }
}
