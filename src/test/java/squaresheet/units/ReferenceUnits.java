package squaresheet.units;

import java.math.BigDecimal;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the library gives for a row about units and roundings, by the kind of quantity. */
final class ReferenceUnits {

  private static final String NUMBER = "(-?\\d+(?:\\.\\d+)?)";
  private static final Pattern AMOUNT = Pattern.compile(
      NUMBER
          + " (square |cubic )?(foot|feet|ft|inch|inches|in|yard|yards|yd|mile|miles|roofing square|m|mm|cm)\\b.*");
  private static final Pattern TAX =
      Pattern.compile("\\$" + NUMBER + "(?: at " + NUMBER + " percent.*)?");
  private static final Pattern ROUND = Pattern.compile("ROUND\\(" + NUMBER + ", ?(\\d)\\)");
  /** By the beginning of the word; a mile is 5280 ft. */
  private static final Map<String, String> MILLIMETRES = Map.of(
      "in", "25.4", "fo", "304.8", "fe", "304.8", "ft", "304.8", "ya", "914.4", "yd", "914.4", "mi",
      "1609344", "mm", "1", "cm", "10", "m", "1000");

  private static final Map<String, Double> PER_SQUARE_METRE =
      Map.of("m2", 1.0, "dm2", 1e2, "cm2", 1e4, "mm2", 1e6);

  private ReferenceUnits() {}

  /** The library's own value; empty where it has no such quantity. */
  static OptionalDouble value(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.startsWith("tax rounding")) {
      return tax(row.inputs());
    }
    if (quantity.startsWith("half away from zero")) {
      return rounded(row.inputs());
    }
    if (quantity.contains("survey") || quantity.contains("rounded by")) {
      return OptionalDouble.empty();
    }
    if (quantity.equals("1 square inch per square foot")) {
      double inches = Length.of(1, 0).toInches();
      return OptionalDouble.of(inches * inches);
    }
    Matcher own = AMOUNT.matcher(quantity);
    Matcher given = AMOUNT.matcher(row.inputs());
    return own.matches()
        ? amount(own, row.unit())
        : given.matches() ? amount(given, row.unit()) : OptionalDouble.empty();
  }

  private static OptionalDouble amount(Matcher amount, String unit) {
    String power = amount.group(2) == null ? "" : amount.group(2).strip();
    BigDecimal number = new BigDecimal(amount.group(1));
    String word = amount.group(3);
    if (word.equals("roofing square") || power.equals("square")) {
      return area(number.doubleValue(), word, unit);
    }
    return power.equals("cubic") ? OptionalDouble.empty() : length(number, word, unit);
  }

  private static OptionalDouble area(double number, String word, String unit) {
    double side = millimetres(word).doubleValue() / 304.8;
    Area.Plan plan = new Area.Plan(number * (word.equals("roofing square") ? 100 : side * side));
    return PER_SQUARE_METRE.containsKey(unit)
        ? OptionalDouble.of(plan.toSquareMetres() * PER_SQUARE_METRE.get(unit))
        : OptionalDouble.empty();
  }

  /** Exact where the tape holds it, else a derived length; a mile per hour goes as many kilometres. */
  private static OptionalDouble length(BigDecimal number, String word, String unit) {
    if (!unit.matches("ft|in|mm|cm|m|km|km/h")) {
      return OptionalDouble.empty();
    }
    BigDecimal millimetres = number.multiply(millimetres(word));
    DerivedLength length;
    try {
      length = Length.fromMillimetres(millimetres).toDerived();
    } catch (ArithmeticException notOnTheGrid) {
      length = new DerivedLength(millimetres.doubleValue() / 25.4);
    }
    return OptionalDouble.of(ReferenceSlopes.in(unit.replace("/h", ""), length));
  }

  private static BigDecimal millimetres(String word) {
    String key = word.substring(0, Math.min(2, word.length()));
    return new BigDecimal(MILLIMETRES.getOrDefault(key, "304.8"));
  }

  private static OptionalDouble tax(String inputs) {
    Matcher parts = TAX.matcher(inputs);
    if (!parts.matches()) {
      return OptionalDouble.empty();
    }
    Money amount = Money.of("USD", new BigDecimal(parts.group(1)));
    Money tax = parts.group(2) == null
        ? amount
        : amount.times(Ratio.ofPercent(new BigDecimal(parts.group(2))));
    return OptionalDouble.of(tax.toCents().amount().doubleValue());
  }

  /** Money rounds to two places; a value shifted so that its rounded place is the cent shows the same rule. */
  private static OptionalDouble rounded(String inputs) {
    Matcher parts = ROUND.matcher(inputs);
    if (!parts.matches()) {
      return OptionalDouble.empty();
    }
    int shift = 2 - Integer.parseInt(parts.group(2));
    BigDecimal shifted = new BigDecimal(parts.group(1)).movePointLeft(shift);
    BigDecimal cents = Money.of("USD", shifted).toCents().amount();
    return OptionalDouble.of(cents.movePointRight(shift).doubleValue());
  }
}
