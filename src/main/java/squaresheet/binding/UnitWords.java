package squaresheet.binding;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The units that headings, labels and unit columns name. */
final class UnitWords {

  private static final Pattern PRICE =
      Pattern.compile("(\\$|€|£|usd|eur|gbp)? ?(?:/|per|a|each) ?([\\p{L} ]+)");

  private static final Map<String, UnitWord> BY_WORD = load();

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
    return BY_WORD.values().stream().filter(unit -> unit.toString().equals(symbol)).findFirst();
  }

  private static Optional<UnitWord> price(String plain) {
    Matcher parts = PRICE.matcher(plain);
    if (!parts.matches()) {
      return Optional.empty();
    }
    String coin = parts.group(1) == null ? "$" : parts.group(1);
    String pack = parts.group(2).strip();
    String per = BY_WORD.containsKey(pack) ? BY_WORD.get(pack).symbol() : pack;
    return BY_WORD.containsKey(coin)
        ? Optional.of(BY_WORD.get(coin).per(per))
        : Optional.empty();
  }
}
