package squaresheet.binding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The units that headings, labels and unit columns name. */
final class UnitWords {

  private static final Pattern PRICE =
      Pattern.compile("(\\$|€|£|usd|eur|gbp) ?(?:/|per ) ?([\\p{L} ]+)");
  /** A price that names no currency is in the one of the job. */
  private static final Pattern PRICE_PER =
      Pattern.compile("(.*\\b(?:price|cost|rate|charge)s?)\\b ?,? ?(?:/|per ) ?([\\p{L} ]+)");

  private static final Map<String, UnitWord> BY_WORD = load();
  private static final Map<String, UnitWord> BY_SYMBOL = BY_WORD.values().stream()
      .collect(Collectors.toMap(UnitWord::toString, unit -> unit, (one, other) -> one));

  private UnitWords() {}

  private static Map<String, UnitWord> load() {
    Map<String, UnitWord> byWord = new LinkedHashMap<>();
    Resource.lines("heading-units.csv").forEach(line -> {
      UnitWord unit = new UnitWord(
          line.getField("unit"),
          Holds.valueOf(line.getField("kind").toUpperCase(Locale.ROOT)),
          Double.parseDouble(line.getField("base")),
          "");
      Resource.parts(line.getField("words"))
          .forEach(word -> byWord.putIfAbsent(Tokens.plain(word), unit));
    });
    return byWord;
  }

  /** The unit that the whole text names, if it names one. */
  static Optional<UnitWord> find(String text) {
    String plain = Tokens.plain(text).replaceAll("\\.$", "");
    UnitWord known = BY_WORD.get(plain);
    return known != null ? Optional.of(known) : price(plain);
  }

  /** The unit with this symbol of ours. */
  static Optional<UnitWord> ofSymbol(String symbol) {
    return Optional.ofNullable(BY_SYMBOL.get(symbol));
  }

  /** Our spellings of all units. */
  static List<String> symbols() {
    return BY_WORD.values().stream().map(UnitWord::symbol).distinct().toList();
  }

  private static Optional<UnitWord> price(String plain) {
    Matcher parts = PRICE.matcher(plain);
    return parts.matches()
        ? Optional.ofNullable(BY_WORD.get(parts.group(1))).map(coin -> coin.per(pack(parts)))
        : Optional.empty();
  }

  /** The words and the unit of a heading like {@code Price per bundle}, if it is one. */
  static Optional<Map.Entry<String, UnitWord>> pricePer(String plain) {
    Matcher parts = PRICE_PER.matcher(plain);
    return parts.matches()
        ? Optional.of(Map.entry(parts.group(1), BY_WORD.get("$").per(pack(parts))))
        : Optional.empty();
  }

  private static String pack(Matcher parts) {
    String pack = parts.group(2).strip();
    UnitWord known = BY_WORD.get(pack);
    return known == null ? pack : known.symbol();
  }
}
