package squaresheet.product;

import squaresheet.finding.CheckInfo;
import squaresheet.finding.Severity;

/** The cards of what the catalogue's reader can say. */
final class Complaints {

  static final CheckInfo NOT_READ =
      new CheckInfo("product-not-read", Severity.ERROR, "A product could not be read");
  static final CheckInfo UNKNOWN =
      new CheckInfo("product-unknown", Severity.ERROR, "A product is not in the catalogue");
  static final CheckInfo COVERAGE_OFF = new CheckInfo(
      "stated-coverage-off", Severity.WARNING, "Stated coverage is not what the pieces cover");
  static final CheckInfo OUTSIDE_LIMIT = new CheckInfo(
      "product-outside-limit", Severity.WARNING, "A product is outside a published limit");
  static final CheckInfo EXPOSURE_OVER =
      new CheckInfo("exposure-over-maximum", Severity.ERROR, "More shows than the product allows");

  private Complaints() {}
}
