package squaresheet.verify;

import java.util.List;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/**
 * What came of a pass over one workbook.
 *
 * @param file the workbook's file name
 * @param findings what there is to say, one finding for one cause
 * @param tallies what each check did
 * @param moneyPath how much of the way to the totals was checked
 */
public record Verdict(
    String file, List<Finding> findings, List<Tally> tallies, MoneyPath moneyPath) {

  public Verdict {
    findings = List.copyOf(findings);
    tallies = List.copyOf(tallies);
  }

  /** Whether no finding withholds the totals. */
  public boolean isPassed() {
    return findings.stream().noneMatch(Finding::isError);
  }

  /** The findings of one weight. */
  public List<Finding> findings(Severity severity) {
    return findings.stream()
        .filter(finding -> finding.info().severity() == severity)
        .toList();
  }

  /** The checks that had nothing to ask about: not passed, not asked. */
  public List<Tally> notAsked() {
    return tallies.stream().filter(tally -> !tally.isAsked()).toList();
  }
}
