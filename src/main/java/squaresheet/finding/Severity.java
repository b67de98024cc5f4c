package squaresheet.finding;

/** How much a finding weighs. */
public enum Severity {
  /** Worth knowing; changes nothing. */
  NOTE,
  /** Probably wrong; totals are still given. */
  WARNING,
  /** Wrong; totals are withheld. Never raised on a correct sheet. */
  ERROR
}
