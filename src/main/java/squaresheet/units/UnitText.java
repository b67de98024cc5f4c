package squaresheet.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a unit as people head a column with it. */
final class UnitText {

  private static final Pattern WORD = Pattern.compile("'([^']+)'|(\\S+)");
  private static final Pattern SIDE =
      Pattern.compile("\\b(plan|sloped|slope|roof)\\b(?! squares?)");
  private static final Pattern RAISED =
      Pattern.compile("(.*?)\\s*(?:\\^\\s*(\\d)|([²³])|(?<=^(?:ft|in|yd|m|cm|mm))([23]))");
  private static final Pattern SQUARED =
      Pattern.compile("(square|sq\\.?|cubic|cu\\.?)\\s*(?!$)(.+)|(s|c)\\s?(f|y|i|m)t?");

  private final String text;
  private Unit.Kind side = Unit.Kind.AREA;

  UnitText(String text) {
    this.text = text;
  }

  /** The words of a list, where several between apostrophes are one. */
  static List<String> words(String list) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(list);
    while (matcher.find()) {
      words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    return words;
  }

  Unit unit() {
    String plain = text.toLowerCase(Locale.ROOT).replaceAll("[()\\[\\]]", " ").strip();
    if (UnitWord.SPELLINGS.containsKey(plain)) {
      return Unit.of(UnitWord.SPELLINGS.get(plain), 1);
    }
    plain = withoutSide(plain);
    if (plain.isEmpty()) {
      throw unreadable(text);
    }
    String[] parts = plain.replaceAll("\\bper\\b", "/").replaceFirst("^/", "1/").split("/", -1);
    Unit unit = product(parts[0]);
    for (int i = 1; i < parts.length; i++) {
      unit = unit.over(product(parts[i]));
    }
    return unit.as(side);
  }

  private String withoutSide(String plain) {
    Matcher said = SIDE.matcher(plain);
    if (!said.find()) {
      return plain;
    }
    side = said.group(1).equals("plan") ? Unit.Kind.PLAN_AREA : Unit.Kind.SLOPED_AREA;
    return said.replaceAll("").strip();
  }

  private Unit product(String factors) {
    Unit unit = Unit.RATIO;
    for (String factor : factors.split("[·*]")) {
      unit = unit.times(factor(factor.strip()));
    }
    return unit;
  }

  private Unit factor(String factor) {
    UnitWord word = UnitWord.SPELLINGS.get(factor.replaceFirst("(?<=\\w)\\.$", ""));
    if (word != null) {
      return Unit.of(word, 1);
    }
    if (factor.equals("ratio") || factor.equals("1") || factor.equals("number")) {
      return Unit.RATIO;
    }
    Matcher raised = RAISED.matcher(factor);
    if (raised.matches()) {
      return factor(raised.group(1)).power(exponent(raised));
    }
    Matcher squared = SQUARED.matcher(factor);
    if (squared.matches()) {
      return squared(squared);
    }
    throw unreadable(factor);
  }

  private static int exponent(Matcher raised) {
    if (raised.group(3) != null) {
      return raised.group(3).equals("²") ? 2 : 3;
    }
    return Integer.parseInt(raised.group(2) == null ? raised.group(4) : raised.group(2));
  }

  private Unit squared(Matcher parts) {
    boolean spelledOut = parts.group(1) != null;
    int power = (spelledOut ? parts.group(1) : parts.group(3)).startsWith("s") ? 2 : 3;
    String word = spelledOut
        ? parts.group(2)
        : switch (parts.group(4)) {
          case "f" -> "ft";
          case "y" -> "yd";
          case "i" -> "in";
          default -> "m";
        };
    return factor(word.strip()).power(power);
  }

  private IllegalArgumentException unreadable(String part) {
    String where = part.equals(text) ? "" : " in '" + text + "'";
    return new IllegalArgumentException(
        "unit must read like ft, sq ft, square, bundle or $/bundle, but reads '" + part + "'"
            + where);
  }
}
