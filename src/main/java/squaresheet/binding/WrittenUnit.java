package squaresheet.binding;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.units.Unit;

/** The unit that a heading, a label or a unit column writes out; nothing where it is not plain. */
final class WrittenUnit {

  private static final Pattern MONEY = Pattern.compile("price|cost|charge|fee|amount|\\$|€|£");
  /** A rate is money where it says so, or is what people are paid. */
  private static final Pattern PAID = Pattern.compile("labou?r|wage|pay|crew|hourly");
  /** Words that say of what something is a part, so that the unit behind them is not its own. */
  private static final Pattern PART = Pattern.compile("%|percent|share| of (?!roof)");
  /** A size in the name of a thing, as in {@code Drip edge 10 ft}. */
  private static final Pattern SIZE = Pattern.compile(".*\\d['\"]? ?-?\\p{L}[\\p{L} .]*");

  /** Over a column it says what one costs, not what is counted. */
  private static final Pattern FOR_ONE = Pattern.compile("each|ea\\.?|per");

  private static final Pattern PER = Pattern.compile("(.+?) ?(?:/| per | in each ) ?(.+)");

  /** A text longer than this is a note, in which a unit may stand for anything. */
  private static final int A_NOTE = 200;

  private WrittenUnit() {}

  /** The unit in a heading or a label. */
  static Optional<Unit> of(String text) {
    if (text.length() > A_NOTE) {
      return Optional.empty();
    }
    String plain = Tokens.plain(text.replaceFirst("[:=]\\s*$", ""));
    if (FOR_ONE.matcher(plain).matches()) {
      return Optional.empty();
    }
    Optional<UnitWord> word = Heading.of(plain).unit();
    if (word.filter(it -> it.kind() == Holds.MONEY).isPresent()) {
      return word.filter(it -> isMoney(plain)).flatMap(WrittenUnit::of);
    }
    if (isMoney(plain) || plain.length() > 60) {
      return Optional.empty();
    }
    if (PER.matcher(plain).matches() && word.filter(WrittenUnit::isPitch).isEmpty()) {
      return rate(plain);
    }
    return word.filter(it -> it.kind() == Holds.RATIO || !PART.matcher(plain).find())
        .filter(it -> !isSize(plain))
        .flatMap(WrittenUnit::of);
  }

  private static boolean isPitch(UnitWord word) {
    return word.kind() == Holds.PITCH;
  }

  private static boolean isMoney(String plain) {
    boolean paid = plain.contains("rate") && PAID.matcher(plain).find();
    return MONEY.matcher(plain).find() || paid;
  }

  private static boolean isSize(String plain) {
    String bare = plain.replaceAll("[(\\[{][^)\\]}]*[)\\]}]", " ").strip();
    return SIZE.matcher(bare).matches() && bare.equals(plain);
  }

  /** {@code Bundles per square}, {@code Coverage (sq ft/roll)}: the words next to the mark, where both are units. */
  private static Optional<Unit> rate(String plain) {
    Matcher inside = Pattern.compile(".*[(\\[]([^)\\]]+)[)\\]].*").matcher(plain);
    Matcher parts = PER.matcher(inside.matches() ? inside.group(1) : plain);
    if (!parts.matches()) {
      return Optional.empty();
    }
    Optional<UnitWord> above = UnitWords.find(parts.group(1))
        .or(() -> Heading.of("x " + parts.group(1)).unit());
    Optional<UnitWord> below =
        UnitWords.find(parts.group(2).replaceFirst("[,(].*", "").strip());
    return above
        .flatMap(WrittenUnit::of)
        .flatMap(one -> below.flatMap(WrittenUnit::of).map(one::over));
  }

  /** The unit of a word of a unit column: {@code bdl}, {@code sf}. */
  static Optional<Unit> alone(String text) {
    return UnitWords.find(text.replaceFirst("(?i)^per ", "")).flatMap(WrittenUnit::of);
  }

  static Optional<Unit> of(UnitWord word) {
    return switch (word.symbol()) {
      case "per 12" -> parsed("pitch");
      case "°" -> parsed("degree");
      default -> parsed(word.toString().toLowerCase(Locale.ROOT));
    };
  }

  private static Optional<Unit> parsed(String text) {
    try {
      return Optional.of(Unit.parse(text));
    } catch (IllegalArgumentException unknown) {
      return Optional.empty();
    }
  }
}
