package squaresheet.verify;

import squaresheet.finding.CheckInfo;

/**
 * What one check did in a pass.
 *
 * @param check its card
 * @param asked how many things it was asked about; 0 is shown as <em>not asked</em>, never as passed
 * @param spoke about how many of them it had something to say
 */
public record Tally(CheckInfo check, int asked, int spoke) {

  /** About how many it had nothing to say. */
  public int silent() {
    return asked - spoke;
  }

  /** Whether there was anything to ask about. */
  public boolean isAsked() {
    return asked > 0;
  }

  @Override
  public String toString() {
    return check.id() + ": "
        + (isAsked()
            ? "asked " + asked + ", silent " + silent() + ", spoke " + spoke
            : "not asked");
  }
}
