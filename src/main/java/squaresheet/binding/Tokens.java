package squaresheet.binding;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** The words of a heading, made alike: lower case, without plural s, marks and doubled spaces. */
final class Tokens {

  /** What people shorten. */
  private static final Map<String, String> SHORT = Map.of(
      "sq", "square",
      "sqs", "square",
      "incl", "including",
      "qty", "quantity",
      "amt", "amount",
      "len", "length",
      "ht", "height",
      "labor", "labour",
      "pct", "percent");

  private Tokens() {}

  /** A unit of area is one word: the {@code sq} of {@code sq ft} is no roofing square. */
  private static final Pattern AREA_UNIT = Pattern.compile(
      "\\bsq(?:uare)?\\.? ?(ft|feet|foot|m|met(?:re|er)s?|in|inch(?:es)?|yds?|yards?)\\b");

  /** The words of a text; signs that are no letter or digit only part them. */
  static List<String> of(String text) {
    return Arrays.stream(
            AREA_UNIT.matcher(plain(text)).replaceAll("sq$1").split("[^\\p{L}\\p{N}]+"))
        .filter(token -> !token.isEmpty())
        .map(Tokens::singular)
        .map(token -> SHORT.getOrDefault(token, token))
        .toList();
  }

  /** The text in lower case with one space between words and the ² of m² as a 2. */
  static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s\\u00a0]+", " ")
        .strip();
  }

  private static String singular(String token) {
    boolean plural = token.length() > 3 && token.endsWith("s") && !token.endsWith("ss");
    return plural ? token.substring(0, token.length() - 1) : token;
  }
}
