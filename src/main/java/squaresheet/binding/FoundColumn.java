package squaresheet.binding;

import java.util.Optional;

/**
 * A column of a found table (or a row, where the table lies on its side), and what it seems to mean.
 *
 * @param at its place across the table
 * @param heading the heading over it, as written
 * @param meaning what it is taken for
 * @param unit the unit that the heading names
 * @param sure how sure that is, 0 to 1
 * @param why in words
 */
record FoundColumn(
    int at, Heading heading, Meaning meaning, Optional<UnitWord> unit, double sure, String why) {

  /** Above this a column is bound without asking. */
  static final double SURE = 0.75;

  /** Below this a column is not even proposed. */
  static final double WORTH_ASKING = 0.45;

  boolean isSure() {
    return sure >= SURE;
  }

  String property() {
    return meaning.property();
  }

  FoundColumn with(double otherSure, String reason) {
    return new FoundColumn(at, heading, meaning, unit, otherSure, why + "; " + reason);
  }

  FoundColumn in(UnitWord other) {
    return new FoundColumn(at, heading, meaning, Optional.of(other), sure, why);
  }

  FoundColumn as(Meaning other, double otherSure, String reason) {
    return new FoundColumn(at, heading, other, unit, otherSure, reason);
  }
}
