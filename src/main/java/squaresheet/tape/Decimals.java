package squaresheet.tape;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Numbers in digits, with the decimal mark of a locale.
 *
 * @param mark the decimal mark, {@code .} or {@code ,}
 */
record Decimals(char mark) {

  /** How a number was understood. */
  enum Kind {
    /** Without doubt. */
    PLAIN,
    /** As a decimal, but with the other mark than the sheet's own. */
    OTHER_MARK,
    /** Either thousands or decimals. */
    THOUSANDS_OR_DECIMALS,
    /** Not at all. */
    NONE
  }

  /**
   * A number and how sure it is.
   *
   * @param kind how it was understood
   * @param value the number; 0 where there is none
   */
  record Decimal(Kind kind, BigDecimal value) {}

  static Decimals of(Locale locale) {
    return new Decimals(
        DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ',' ? ',' : '.');
  }

  /** Reads digits; thousands may be set apart only where {@code grouped}. */
  Decimal read(String digits, boolean grouped) {
    String own = Pattern.quote(String.valueOf(mark));
    String other = Pattern.quote(String.valueOf(otherMark()));
    String tail = "(" + own + "\\d*)?";
    if (digits.matches("\\d+" + tail + "|" + own + "\\d+")) {
      return new Decimal(Kind.PLAIN, number(digits));
    }
    if (digits.matches("[1-9]\\d{0,2}((" + other + "\\d{3})+|( \\d{3})+)" + tail)) {
      return new Decimal(grouped ? Kind.PLAIN : Kind.THOUSANDS_OR_DECIMALS, ungrouped(digits));
    }
    if (digits.matches("\\d*" + other + "\\d+")) {
      return new Decimal(Kind.OTHER_MARK, new BigDecimal(digits.replace(',', '.')));
    }
    return new Decimal(Kind.NONE, BigDecimal.ZERO);
  }

  private BigDecimal ungrouped(String digits) {
    return number(digits.replace(" ", "").replace(String.valueOf(otherMark()), ""));
  }

  private BigDecimal number(String digits) {
    return new BigDecimal(digits.replace(mark, '.'));
  }

  /** A number as this locale writes it. */
  String write(BigDecimal number) {
    BigDecimal shortest = number.stripTrailingZeros();
    return shortest.toPlainString().replace('.', mark);
  }

  char otherMark() {
    return mark == ',' ? '.' : ',';
  }

  /** The word for the decimal mark. */
  static String word(char mark) {
    return mark == ',' ? "comma" : "point";
  }
}
