package squaresheet.estimate;

import squaresheet.finding.CheckInfo;
import squaresheet.finding.Severity;

/** The cards of what pricing can say. */
final class Complaints {

  static final CheckInfo TERMS =
      new CheckInfo("terms-not-read", Severity.ERROR, "The terms could not be read");
  static final CheckInfo PRICE_NOT_READ =
      new CheckInfo("price-not-read", Severity.ERROR, "A price could not be read");
  static final CheckInfo PRICE_MISSING =
      new CheckInfo("price-missing", Severity.ERROR, "A product to be ordered has no price");
  static final CheckInfo PRICE_UNUSED = new CheckInfo(
      "price-without-product",
      Severity.NOTE,
      "A price is for a product that is not in the catalogue");
  static final CheckInfo PRICE_UNIT =
      new CheckInfo("price-unit-off", Severity.ERROR, "A price is not for the pack that is bought");
  static final CheckInfo RATE_NOT_READ =
      new CheckInfo("rate-not-read", Severity.ERROR, "A rate could not be read");
  static final CheckInfo RATE_MISSING = new CheckInfo(
      "rate-missing", Severity.ERROR, "A part of the roof has no rate, or more than one");

  static final CheckInfo RATE_UNIT =
      new CheckInfo("rate-unit-off", Severity.ERROR, "A rate is not for the unit of its quantity");

  static final CheckInfo COLUMN_UNKNOWN = new CheckInfo(
      "list-column-unknown", Severity.WARNING, "A column of a list is not understood");

  static final CheckInfo CATEGORY_NOT_ON_TERMS = new CheckInfo(
      "category-not-on-terms", Severity.ERROR, "A category of one's own and the terms do not fit");

  static final CheckInfo DISCOUNT_OVER_PRICE =
      new CheckInfo("discount-over-price", Severity.ERROR, "The discount is larger than the price");

  private Complaints() {}
}
