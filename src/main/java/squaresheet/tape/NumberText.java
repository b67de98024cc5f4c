package squaresheet.tape;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.tape.Decimals.Decimal;
import squaresheet.tape.Decimals.Kind;

/**
 * The grammar of a written number, without findings.
 *
 * @param decimals the sheet's decimal mark
 */
record NumberText(Decimals decimals) {

  /**
   * What a text comes to.
   *
   * @param amount the number
   * @param isWord whether it is written in letters
   * @param isOtherMark whether its decimal mark is the other one than the sheet's
   */
  record Reading(Amount amount, boolean isWord, boolean isOtherMark) {}

  private static final List<String> WORDS = List.of(
      "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
      "eleven", "twelve");
  private static final String NOTHING = "no|zero|nil";

  private static final String DIGITS =
      "(?:[\\d][\\d.,]*(?: \\d{3})*(?:[.,]\\d*)?(?![\\d.,])|[.,]\\d+(?![\\d.,]))";
  private static final Pattern NUMBER = Pattern.compile("(?<sign>[-+] ?)?"
      + "(?:(?<word>" + String.join("|", WORDS) + "|" + NOTHING + ")(?!\\p{L})"
      + "|(?<whole>" + DIGITS + ")(?:[ -](?<top>\\d+) ?/ ?(?<bottom>\\d+))?"
      + "|(?<aloneTop>\\d+) ?/ ?(?<aloneBottom>\\d+))"
      + "(?: ?(?<percent>%|percent|per cent|pct\\.?))?(?: ?(?<of>\\p{L}.*))?");

  private static final int DECIMALS = 15;

  /** Reads plain text; empty where it has no known shape. */
  Optional<Reading> read(String plain) {
    Matcher parts = NUMBER.matcher(plain);
    return parts.matches() ? number(parts).map(it -> signed(parts, it)) : Optional.empty();
  }

  private static Reading signed(Matcher parts, Decimal number) {
    boolean negative = parts.group("sign") != null && parts.group("sign").startsWith("-");
    Amount amount = new Amount(
        negative ? number.value().negate() : number.value(),
        parts.group("percent") != null,
        parts.group("of") == null ? "" : parts.group("of"));
    return new Reading(amount, parts.group("word") != null, number.kind() == Kind.OTHER_MARK);
  }

  private Optional<Decimal> number(Matcher parts) {
    if (parts.group("word") != null) {
      int at = Math.max(0, WORDS.indexOf(parts.group("word")));
      return Optional.of(new Decimal(Kind.PLAIN, BigDecimal.valueOf(at)));
    }
    if (parts.group("aloneTop") != null) {
      return fraction(BigDecimal.ZERO, parts.group("aloneTop"), parts.group("aloneBottom"));
    }
    Decimal whole = decimals.read(parts.group("whole"), true);
    if (parts.group("top") == null) {
      return Optional.of(whole).filter(it -> it.kind() != Kind.NONE);
    }
    return parts.group("whole").matches("\\d+")
        ? fraction(whole.value(), parts.group("top"), parts.group("bottom"))
        : Optional.empty();
  }

  /** A whole number and a part of less than one; anything else could be read in two ways. */
  private static Optional<Decimal> fraction(BigDecimal whole, String top, String bottom) {
    BigDecimal part = new BigDecimal(top);
    BigDecimal over = new BigDecimal(bottom);
    return part.compareTo(over) < 0
        ? Optional.of(new Decimal(
            Kind.PLAIN,
            whole.add(part.divide(over, DECIMALS, RoundingMode.HALF_UP)).stripTrailingZeros()))
        : Optional.empty();
  }
}
