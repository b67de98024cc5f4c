package squaresheet.tape;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.tape.Decimals.Decimal;
import squaresheet.tape.Decimals.Kind;

/**
 * The grammar of a written pitch, without findings.
 *
 * @param decimals the sheet's decimal mark
 */
record PitchText(Decimals decimals) {

  /** In what a pitch is given. */
  enum Form {
    /** Rise over run, the run as written. */
    RATIO,
    /** Inches of rise to the foot, {@code 6"}. */
    PER_FOOT,
    /** Degrees from the level. */
    DEGREES,
    /** Percent of the run. */
    PERCENT,
    /** A bare number. */
    BARE
  }

  /**
   * A pitch in parts.
   *
   * @param form in what it is given
   * @param rise the number, or the rise
   * @param run the run; 12 where it is not written
   * @param step one last digit of the rise, or one part of its fraction
   * @param sign what stands between rise and run; empty where nothing does
   * @param otherMark whether the decimal mark is the other one than the sheet's
   */
  record Slope(
      Form form,
      BigDecimal rise,
      BigDecimal run,
      BigDecimal step,
      String sign,
      boolean otherMark) {}

  private static final BigDecimal FOOT = BigDecimal.valueOf(12);
  private static final String NUMBER = "(?:\\d[\\d.,]*|[.,]\\d+)";
  private static final String MARK = "(?: ?(?:\"|in\\.?|inch(?:es)?|mm|cm|m))?";
  private static final String RISE = "(?:(?<rise>" + NUMBER
      + ")(?:[ -](?<top>\\d+)/(?<bottom>\\d+))?|(?<aloneTop>\\d+)/(?<aloneBottom>\\d+))";

  private static final Pattern RATIO = Pattern.compile(
      RISE + MARK + " ?(?<sign>/|:|-|in|on|per|over|to) ?(?<run>" + NUMBER + ")" + MARK);
  private static final Pattern PER_FOOT = Pattern.compile(
      RISE + " ?(?:\"|in\\.?|inch(?:es)?)(?: ?(?:per|/|to the) ?(?:foot|ft\\.?|'))?");
  private static final Pattern DEGREES =
      Pattern.compile(RISE + " ?(?:\u00B0|degrees?|degs?\\.?|\u00B0 ?deg)");
  private static final Pattern PERCENT = Pattern.compile(RISE + " ?(?:%|percent|per cent|pct\\.?)");
  private static final Pattern BARE = Pattern.compile(RISE);

  /** Reads plain text; empty where it has no known shape. */
  Optional<Slope> read(String plain) {
    String text = plain
        .replaceFirst("^(?:pitch|slope|rise)[ :]*", "")
        .replaceFirst(" ?(?:pitch|slope|rise)$", "");
    return slope(RATIO, Form.RATIO, text)
        .or(() -> slope(PER_FOOT, Form.PER_FOOT, text))
        .or(() -> slope(DEGREES, Form.DEGREES, text))
        .or(() -> slope(PERCENT, Form.PERCENT, text))
        .or(() -> slope(BARE, Form.BARE, text));
  }

  private Optional<Slope> slope(Pattern pattern, Form form, String text) {
    Matcher parts = pattern.matcher(text);
    if (!parts.matches()) {
      return Optional.empty();
    }
    boolean alone = parts.group("rise") == null;
    Decimal rise = decimals.read(alone ? "0" : parts.group("rise"), false);
    Decimal run = form == Form.RATIO
        ? decimals.read(parts.group("run"), false)
        : new Decimal(Kind.PLAIN, FOOT);
    boolean otherMark = rise.kind() == Kind.OTHER_MARK || run.kind() == Kind.OTHER_MARK;
    boolean known = known(rise) && known(run) && run.value().signum() > 0;
    return known
        ? withFraction(parts, rise.value())
            .map(whole -> new Slope(
                form,
                whole,
                run.value(),
                step(parts, rise.value()),
                form == Form.RATIO ? parts.group("sign") : "",
                otherMark))
        : Optional.empty();
  }

  private static boolean known(Decimal number) {
    return number.kind() == Kind.PLAIN || number.kind() == Kind.OTHER_MARK;
  }

  private static BigDecimal step(Matcher parts, BigDecimal whole) {
    String bottom = parts.group(parts.group("rise") == null ? "aloneBottom" : "bottom");
    return bottom == null
        ? BigDecimal.ONE.movePointLeft(Math.max(0, whole.scale()))
        : BigDecimal.ONE.divide(new BigDecimal(bottom), 12, RoundingMode.HALF_UP);
  }

  private static Optional<BigDecimal> withFraction(Matcher parts, BigDecimal whole) {
    boolean alone = parts.group("rise") == null;
    if (!alone && parts.group("top") == null) {
      return Optional.of(whole);
    }
    BigDecimal top = new BigDecimal(parts.group(alone ? "aloneTop" : "top"));
    BigDecimal bottom = new BigDecimal(parts.group(alone ? "aloneBottom" : "bottom"));
    boolean proper = top.compareTo(bottom) < 0 && whole.scale() <= 0;
    return proper
        ? Optional.of(whole.add(top.divide(bottom, 12, RoundingMode.HALF_UP)))
        : Optional.empty();
  }
}
