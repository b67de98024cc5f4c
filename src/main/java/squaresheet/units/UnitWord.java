package squaresheet.units;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A unit that has a word of its own.
 *
 * @param order where it stands in a product: money first, then areas, then packs
 * @param word as it is written
 * @param dimension what it measures; empty for a plain number
 * @param degree the power of the dimension, 2 for the square of 100 sq ft
 * @param size in the base of its dimension: feet, hours, pounds, radians
 * @param kind what sort of thing it is when it stands alone
 */
record UnitWord(int order, String word, String dimension, int degree, double size, Unit.Kind kind)
    implements Comparable<UnitWord> {

  /** Feet in a metre, from the exact 0.3048 m in a foot. */
  private static final double METRE = 1 / 0.3048;
  /** Pounds in a kilogram, from the exact 0.45359237 kg in a pound. */
  private static final double KILOGRAM = 1 / 0.45359237;

  /** Every spelling, in lower case, to its word. */
  static final Map<String, UnitWord> SPELLINGS = spellings();

  private static Map<String, UnitWord> spellings() {
    Map<String, UnitWord> all = new LinkedHashMap<>();
    addMeasures(all);
    addMoney(all);
    addPacks(all);
    return all;
  }

  private static void addMeasures(Map<String, UnitWord> all) {
    add(
        all,
        1,
        "length",
        1,
        Unit.Kind.LENGTH,
        "ft foot feet lf 'lin ft' 'lineal ft' 'linear ft' 'linear feet' '",
        1);
    add(all, 1, "length", 1, Unit.Kind.LENGTH, "in inch inches \"", 1 / 12.0);
    add(all, 1, "length", 1, Unit.Kind.LENGTH, "yd yard yards", 3);
    add(all, 1, "length", 1, Unit.Kind.LENGTH, "m metre metres meter meters", METRE);
    add(all, 1, "length", 1, Unit.Kind.LENGTH, "cm centimetre centimetres", METRE / 100);
    add(all, 1, "length", 1, Unit.Kind.LENGTH, "mm millimetre millimetres", METRE / 1000);
    add(
        all,
        1,
        "length",
        2,
        Unit.Kind.SQUARES,
        "square squares sq sqs 'roof square' 'roof squares'",
        100);
    add(all, 2, "time", 1, Unit.Kind.HOURS, "hour hours hr hrs h", 1);
    add(all, 2, "time", 1, Unit.Kind.HOURS, "minute minutes min mins", 1 / 60.0);
    add(all, 2, "weight", 1, Unit.Kind.WEIGHT, "lb lbs pound pounds", 1);
    add(all, 2, "weight", 1, Unit.Kind.WEIGHT, "oz ounce ounces", 1 / 16.0);
    add(all, 2, "weight", 1, Unit.Kind.WEIGHT, "ton tons", 2000);
    add(all, 2, "weight", 1, Unit.Kind.WEIGHT, "kg kilogram kilograms", KILOGRAM);
    add(all, 2, "pitch", 1, Unit.Kind.PITCH, "pitch :12 /12 'in per 12' x/12 x:12", 1);
    add(all, 2, "angle", 1, Unit.Kind.ANGLE, "degree degrees deg °", Math.PI / 180);
    add(all, 2, "angle", 1, Unit.Kind.ANGLE, "rad radian radians", 1);
    add(all, 2, "", 1, Unit.Kind.RATIO, "% percent pct", 0.01);
  }

  private static void addMoney(Map<String, UnitWord> all) {
    add(all, 0, "money USD", 1, Unit.Kind.MONEY, "$ usd dollar dollars", 1);
    add(all, 0, "money USD", 1, Unit.Kind.MONEY, "cent cents ¢", 0.01);
    add(all, 0, "money EUR", 1, Unit.Kind.MONEY, "€ eur euro euros", 1);
    add(all, 0, "money GBP", 1, Unit.Kind.MONEY, "£ gbp", 1);
    for (String code : List.of("CAD", "AUD", "NZD", "CHF", "MXN")) {
      UnitWord word = new UnitWord(0, code, "money " + code, 1, 1, Unit.Kind.MONEY);
      all.put(code.toLowerCase(java.util.Locale.ROOT), word);
    }
  }

  private static void addPacks(Map<String, UnitWord> all) {
    pack(all, Unit.Kind.BUNDLES, "bundle bundles bdl bdls bndl");
    pack(all, Unit.Kind.ROLLS, "roll rolls rl rls");
    pack(all, Unit.Kind.BOXES, "box boxes bx");
    pack(all, Unit.Kind.PIECES, "piece pieces pc pcs each ea");
    pack(all, Unit.Kind.SHEETS, "sheet sheets sht shts");
    for (String word : List.of(
        "coil",
        "tube",
        "pail",
        "bag",
        "can",
        "carton",
        "pallet",
        "load",
        "layer",
        "course",
        "row",
        "nail",
        "day",
        "plane",
        "stick",
        "job",
        "vent",
        "boot",
        "person",
        "gallon",
        "pack",
        "opening",
        "length",
        "board",
        "step",
        "trip",
        "container",
        "mark",
        "line",
        "story",
        "place")) {
      pack(all, Unit.Kind.COUNT, word + " " + word + "s");
    }
    pack(all, Unit.Kind.COUNT, "crew crews crewmember");
  }

  private static void pack(Map<String, UnitWord> all, Unit.Kind kind, String words) {
    String word = words.substring(0, words.indexOf(' '));
    add(all, 3, word, 1, kind, words, 1);
  }

  private static void add(
      Map<String, UnitWord> all,
      int order,
      String dimension,
      int degree,
      Unit.Kind kind,
      String spellings,
      double size) {
    List<String> words = UnitText.words(spellings);
    UnitWord word = new UnitWord(order, words.get(0), dimension, degree, size, kind);
    words.forEach(spelling -> all.put(spelling, word));
  }

  /** This word to a power of 1 and up: {@code ft}, {@code sq ft}, {@code cu ft}. */
  String spelled(int power) {
    if (power == 1) {
      return word;
    }
    if (kind == Unit.Kind.LENGTH && power <= 3) {
      boolean metric = word.endsWith("m");
      return metric ? word + (power == 2 ? "²" : "³") : (power == 2 ? "sq " : "cu ") + word;
    }
    return word + "^" + power;
  }

  @Override
  public int compareTo(UnitWord other) {
    return order != other.order ? Integer.compare(order, other.order) : word.compareTo(other.word);
  }
}
