package squaresheet.verify;

import java.util.List;
import squaresheet.finding.Finding;

/**
 * A workbook whose amounts are not given.
 *
 * @param file its name
 * @param reasons why, at least one
 */
public record Withheld(String file, List<Finding> reasons) {

  /** Takes a copy. */
  public Withheld {
    reasons = List.copyOf(reasons);
  }

  static Withheld of(Verdict verdict) {
    return new Withheld(verdict.file(), verdict.reasons());
  }
}
