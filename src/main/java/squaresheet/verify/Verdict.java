package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/** What came of a pass over one workbook. Only a passed one carries totals. */
public final class Verdict {

  /** What a workbook without an estimate is withheld under. */
  static final CheckInfo NO_TOTALS =
      new CheckInfo("no-totals-found", Severity.NOTE, "The workbook has no price that is sure");

  private final String file;
  private final List<Finding> findings;
  private final List<Finding> said;
  private final List<Tally> tallies;
  private final MoneyPath moneyPath;
  private final Optional<JobTotal> total;
  private final List<Finding> asked;

  Verdict(
      String file,
      List<Finding> findings,
      List<Finding> said,
      List<Tally> tallies,
      MoneyPath moneyPath,
      Optional<JobTotal> total) {
    this(file, findings, said, tallies, moneyPath, total, List.of());
  }

  private Verdict(
      String file,
      List<Finding> findings,
      List<Finding> said,
      List<Tally> tallies,
      MoneyPath moneyPath,
      Optional<JobTotal> total,
      List<Finding> asked) {
    this.file = file;
    this.findings = List.copyOf(findings);
    this.said = List.copyOf(said);
    this.tallies = List.copyOf(tallies);
    this.moneyPath = moneyPath;
    this.total = isPassed() ? total : Optional.empty();
    this.asked = List.copyOf(asked);
  }

  /** The same with what has to be answered before there are totals. */
  Verdict asking(List<Finding> questions) {
    return new Verdict(file, findings, said, tallies, moneyPath, total, questions);
  }

  /** The workbook's file name. */
  public String file() {
    return file;
  }

  /** What there is to say, one finding for one cause. */
  public List<Finding> findings() {
    return findings;
  }

  /** All that every check said, several of one cause among it. */
  List<Finding> said() {
    return said;
  }

  /** The findings of one weight. */
  public List<Finding> findings(Severity severity) {
    return findings.stream()
        .filter(finding -> finding.info().severity() == severity)
        .toList();
  }

  /** What each check did. */
  public List<Tally> tallies() {
    return tallies;
  }

  /** The checks that had nothing to ask about: not passed, not asked. */
  public List<Tally> notAsked() {
    return tallies.stream().filter(tally -> !tally.isAsked()).toList();
  }

  /** How much of the way to what is ordered and charged was checked. */
  public MoneyPath moneyPath() {
    return moneyPath;
  }

  /** Whether no finding withholds the totals. */
  public boolean isPassed() {
    return findings.stream().noneMatch(Finding::isError);
  }

  /** The amounts of the job, if the pass was passed and the workbook has an estimate. */
  public Optional<JobTotal> total() {
    return total;
  }

  /** Why there are no totals: the errors, what has to be answered, or that there is no price; nothing where there are totals. */
  public List<Finding> reasons() {
    if (total.isPresent()) {
      return List.of();
    }
    List<Finding> errors = findings(Severity.ERROR);
    if (errors.isEmpty() && !asked.isEmpty()) {
      return asked;
    }
    String says =
        "has no estimate with the defined names line_amount, estimate_total and terms_currency, and no cell that is"
            + " bound as the price, so there are no totals to give; bind tells which cell is which";
    return errors.isEmpty()
        ? List.of(new Finding(NO_TOTALS, new Where.InFile(file), says))
        : errors;
  }
}
