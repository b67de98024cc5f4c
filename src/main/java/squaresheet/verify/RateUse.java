package squaresheet.verify;

import java.util.Optional;
import squaresheet.sheet.Address;

/**
 * A rate that a formula multiplies an amount with.
 *
 * @param cell the formula
 * @param rate the rate
 * @param before the formula on the way to that amount that multiplied with the same rate already, where one did
 */
record RateUse(FormulaCell cell, Rate rate, Optional<Address> before) {

  /** Whether the amount had the rate already. */
  boolean isAgain() {
    return before.isPresent();
  }

  /** Where the amount got the rate first, in a sentence. */
  String first() {
    return before
        .map(at -> at.equals(cell.at()) ? "the same formula" : at.toString())
        .orElse("");
  }
}
