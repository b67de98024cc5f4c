package squaresheet.binding;

import java.util.Optional;
import java.util.regex.Pattern;
import squaresheet.units.Unit;

/** Whether a heading, a label or a number format says that a number is money. */
enum MoneyWords {
  /** It is money. */
  MONEY,
  /** It is something else: hours, squares, feet. */
  OTHER,
  /** Nothing is said. */
  NOTHING;

  /** Words of which one is enough, whatever unit stands behind: {@code Price per bundle}. */
  private static final Pattern SURELY = Pattern.compile(
      "(?i).*(price|cost(?! code)|charge|\\bfees?\\b|[$€£]|\\b(usd|eur|gbp|dollars?|euros?|bid|quote|quotation|offer"
          + "|contract|invoice|deposit|payments?|wages?|vat)\\b).*");

  /** Words that may be said of other things too. */
  private static final Pattern RATHER =
      Pattern.compile("(?i).*\\b(amount|extension|extended|tax)\\b.*");

  private static final Pattern RATE = Pattern.compile("(?i).*(\\brate\\b|%|percent).*");

  /** A mark of a country in a number format, which is no currency. */
  private static final Pattern COUNTRY = Pattern.compile("\\[\\$-[^]]*]");

  private static final Pattern COIN =
      Pattern.compile(".*([$€£¥]|\\b(USD|EUR|GBP|CAD|AUD|NZD|CHF)\\b).*");

  static MoneyWords of(String text) {
    if (RATE.matcher(text).matches() && !text.matches(".*[$€£].*")) {
      return NOTHING;
    }
    if (SURELY.matcher(text).matches()) {
      return MONEY;
    }
    Optional<Unit> unit = WrittenUnit.of(text).filter(it -> !it.isLike(Unit.RATIO));
    return unit.isPresent() ? OTHER : RATHER.matcher(text).matches() ? MONEY : NOTHING;
  }

  static MoneyWords ofFormat(String format) {
    if (COIN.matcher(COUNTRY.matcher(format).replaceAll("")).matches()) {
      return MONEY;
    }
    return FormatUnits.of(format).isPresent() ? OTHER : NOTHING;
  }

  /** What a unit in a cell of its own says of the number before it. */
  static MoneyWords ofUnit(String text) {
    return UnitWords.find(text)
        .map(word -> word.kind() == Holds.MONEY ? MONEY : OTHER)
        .orElse(NOTHING);
  }

  /** What is added up of two: of money and something else together nobody knows what it is. */
  MoneyWords plus(MoneyWords other) {
    return this == OTHER || other == OTHER ? OTHER : this == MONEY ? this : other;
  }

  /** A price times a quantity is money; the rest is open, since a typed number may be a price. */
  MoneyWords times(MoneyWords other) {
    return this == MONEY || other == MONEY ? MONEY : NOTHING;
  }

  /** The first of two that says anything. */
  MoneyWords or(MoneyWords other) {
    return this == NOTHING ? other : this;
  }
}
