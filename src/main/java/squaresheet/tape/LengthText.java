package squaresheet.tape;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.tape.Decimals.Decimal;
import squaresheet.tape.Decimals.Kind;

/**
 * The grammar of a written length, without findings: which shape the text has and what it comes to.
 *
 * @param bare the unit of bare numbers
 * @param decimals the sheet's decimal mark
 */
record LengthText(TapeUnit bare, Decimals decimals) {

  /** Why a text is, or is not, one length. */
  enum Doubt {
    /** None. */
    NONE,
    /** The decimal mark is the other one than the sheet's. */
    OTHER_MARK,
    /** A mark before three digits can set apart thousands or decimals. */
    THOUSANDS_OR_DECIMALS,
    /** A fraction of one or more, such as 53/4, can be 5 3/4 or 53 fourths. */
    IMPROPER_FRACTION,
    /** A bare 6-1/2 in a column of feet can be six and a half feet or 6 ft 1/2 in. */
    FEET_OR_FRACTION
  }

  /**
   * What a text comes to.
   *
   * @param millimetres the length, exact or to 1e-12 mm
   * @param isBare whether the unit was taken from the sheet
   * @param inches the inches beside feet, 0 where there are none
   * @param doubt what makes it doubtful
   */
  record Reading(BigDecimal millimetres, boolean isBare, BigDecimal inches, Doubt doubt) {
    private Reading(BigDecimal millimetres, boolean isBare, Doubt doubt) {
      this(millimetres, isBare, BigDecimal.ZERO, doubt);
    }
  }

  private static final String NUMBER = "(?:\\d[\\d.,]*|[.,]\\d+)";
  private static final String FEET = " ?(?:'|(?:feet|foot|ft)\\.?)";
  private static final String INCHES = " ?(?:\"|(?:inches|inch|ins|in)\\.?)";

  /** A number, a number and a fraction, or a fraction. */
  private static final String QUANTITY =
      "(?:(?<whole>" + NUMBER + ")(?:(?<join>[ -])(?<top>\\d+) ?/ ?(?<bottom>\\d+))?"
          + "|(?<aloneTop>\\d+) ?/ ?(?<aloneBottom>\\d+))";

  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("(?<feet>\\d+)" + FEET + " ?[-,]? ?" + QUANTITY + "(?:" + INCHES + ")?");
  private static final Pattern APART =
      Pattern.compile("(?<feet>\\d+)(?: ?- ?| )" + QUANTITY + "(?<mark>" + INCHES + ")?");
  private static final Pattern ONE_IMPERIAL =
      Pattern.compile(QUANTITY + "(?:(?<ft>" + FEET + ")|(?<in>" + INCHES + "))?");
  private static final Pattern METRIC = Pattern.compile("(?<whole>" + NUMBER
      + "(?: \\d{3})*(?:[.,]\\d+)?) ?(?<unit>" + "mm|cm|m|(?:milli|centi)?met(?:re|er)s?)\\.?");

  /** Reads plain text without a sign; empty where it has no known shape. */
  Optional<Reading> read(String plain) {
    return metric(plain)
        .or(() -> matched(FEET_AND_INCHES, plain).flatMap(this::feetAndInches))
        .or(() -> matched(ONE_IMPERIAL, plain).flatMap(this::one))
        .or(() -> matched(APART, plain).flatMap(this::apart))
        .or(() -> bareMetric(plain));
  }

  private static Optional<Matcher> matched(Pattern pattern, String text) {
    Matcher parts = pattern.matcher(text);
    return parts.matches() ? Optional.of(parts) : Optional.empty();
  }

  private Optional<Reading> metric(String plain) {
    return matched(METRIC, plain)
        .flatMap(parts -> number(parts.group("whole"), unit(parts.group("unit")), false));
  }

  private static BigDecimal unit(String word) {
    return switch (word.substring(0, Math.min(2, word.length()))) {
      case "mm", "mi" -> BigDecimal.ONE;
      case "cm", "ce" -> BigDecimal.TEN;
      default -> TapeUnit.METRES.millimetres();
    };
  }

  /** Digits in groups of three without a unit, such as {@code 7 480}, on a metric sheet. */
  private Optional<Reading> bareMetric(String plain) {
    return bare.isImperial() || !plain.matches("\\d{1,3}( \\d{3})+([.,]\\d+)?")
        ? Optional.empty()
        : number(plain, bare.millimetres(), true);
  }

  private Optional<Reading> number(String digits, BigDecimal unit, boolean isBare) {
    Decimal number = decimals.read(digits, unit.compareTo(BigDecimal.ONE) == 0);
    return doubt(number.kind())
        .map(doubt -> new Reading(number.value().multiply(unit), isBare, doubt));
  }

  private static Optional<Doubt> doubt(Kind kind) {
    return switch (kind) {
      case PLAIN -> Optional.of(Doubt.NONE);
      case OTHER_MARK -> Optional.of(Doubt.OTHER_MARK);
      case THOUSANDS_OR_DECIMALS -> Optional.of(Doubt.THOUSANDS_OR_DECIMALS);
      case NONE -> Optional.empty();
    };
  }

  private Optional<Reading> one(Matcher parts) {
    boolean isFeet = parts.group("ft") != null;
    boolean isBare = !isFeet && parts.group("in") == null;
    TapeUnit unit = isFeet ? TapeUnit.FEET : isBare ? bare : TapeUnit.INCHES;
    if (isBare && !bare.isImperial() && parts.group("join") != null) {
      return Optional.empty();
    }
    return amount(parts, unit.millimetres(), isBare).map(read -> hyphenated(parts, read, unit));
  }

  /** Six hyphen a half is six and a half inches; of feet it could as well be 6 ft 1/2 in. */
  private static Reading hyphenated(Matcher parts, Reading read, TapeUnit unit) {
    boolean doubtful = "-".equals(parts.group("join")) && read.isBare() && unit == TapeUnit.FEET;
    return doubtful && read.doubt() == Doubt.NONE
        ? new Reading(read.millimetres(), read.isBare(), Doubt.FEET_OR_FRACTION)
        : read;
  }

  private Optional<Reading> feetAndInches(Matcher parts) {
    BigDecimal feet = new BigDecimal(parts.group("feet")).multiply(TapeUnit.FEET.millimetres());
    BigDecimal inch = TapeUnit.INCHES.millimetres();
    return amount(parts, inch, false)
        .map(read -> new Reading(
            feet.add(read.millimetres()),
            false,
            read.millimetres().divide(inch, 12, RoundingMode.HALF_UP),
            read.doubt()));
  }

  /** Feet and inches set apart by a hyphen or a space alone, which only stands where inches stay under twelve. */
  private Optional<Reading> apart(Matcher parts) {
    boolean imperial = bare.isImperial() || parts.group("mark") != null;
    return imperial
        ? feetAndInches(parts).filter(read -> read.inches().compareTo(TWELVE) < 0)
        : Optional.empty();
  }

  static final BigDecimal TWELVE = BigDecimal.valueOf(12);

  private Optional<Reading> amount(Matcher parts, BigDecimal unit, boolean isBare) {
    if (parts.group("aloneTop") != null) {
      return fraction(
          BigDecimal.ZERO, parts.group("aloneTop"), parts.group("aloneBottom"), unit, isBare);
    }
    String digits = parts.group("whole");
    if (parts.group("top") == null) {
      return number(digits, unit, isBare);
    }
    return digits.matches("\\d+")
        ? fraction(new BigDecimal(digits), parts.group("top"), parts.group("bottom"), unit, isBare)
        : Optional.empty();
  }

  private static Optional<Reading> fraction(
      BigDecimal whole, String top, String bottom, BigDecimal unit, boolean isBare) {
    BigDecimal over = new BigDecimal(bottom);
    if (over.signum() == 0) {
      return Optional.empty();
    }
    BigDecimal part = new BigDecimal(top);
    BigDecimal millimetres =
        whole.multiply(over).add(part).multiply(unit).divide(over, 12, RoundingMode.HALF_UP);
    Doubt doubt = part.compareTo(over) < 0 ? Doubt.NONE : Doubt.IMPROPER_FRACTION;
    return Optional.of(new Reading(millimetres, isBare, doubt));
  }

  /** The words and signs around a number that are no units, taken out. */
  static String withoutNotes(String plain) {
    return plain
        .replaceAll(
            "(?<![\\p{L}])(?!(?:ft|feet|foot|in|ins|inch|inches|mm|cm|m|metres?|meters?|yds?|yards?|km|dm|miles?|rods?)(?![\\p{L}]))\\p{L}+\\.?",
            " ")
        .replaceAll("[^\\d\\p{L}.,'\"/ -]", " ")
        .replaceAll(" +", " ")
        .strip()
        .toLowerCase(Locale.ROOT);
  }
}
