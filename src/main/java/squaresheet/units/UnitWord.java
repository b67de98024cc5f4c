package squaresheet.units;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

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

  private static final List<String> COUNTED = List.of(
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
      "place",
      "crew");

  /** What is counted one by one, as against what is bought by the pack or paid by. */
  private static final Set<String> ONE_BY_ONE = Set.of(
      "piece", "layer", "course", "row", "nail", "plane", "stick", "vent", "boot", "opening",
      "length", "board", "step", "mark", "line", "story", "place");

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
    addLengths(all);
    Unit.Kind squares = Unit.Kind.SQUARES;
    add(all, "length", 2, squares, 100, "square squares sq sqs 'roof square' 'roof squares'");
    add(all, "time", 1, Unit.Kind.HOURS, 1, "hour hours hr hrs h");
    add(all, "time", 1, Unit.Kind.HOURS, 1 / 60.0, "minute minutes min mins");
    add(all, "weight", 1, Unit.Kind.WEIGHT, 1, "lb lbs pound pounds");
    add(all, "weight", 1, Unit.Kind.WEIGHT, 1 / 16.0, "oz ounce ounces");
    add(all, "weight", 1, Unit.Kind.WEIGHT, 2000, "ton tons");
    add(all, "weight", 1, Unit.Kind.WEIGHT, KILOGRAM, "kg kilogram kilograms");
    add(all, "pitch", 1, Unit.Kind.PITCH, 1, "pitch :12 /12 'in per 12' x/12 x:12");
    add(all, "angle", 1, Unit.Kind.ANGLE, Math.PI / 180, "degree degrees deg °");
    add(all, "angle", 1, Unit.Kind.ANGLE, 1, "rad radian radians");
    add(all, "", 1, Unit.Kind.RATIO, 0.01, "% percent pct");
  }

  private static void addLengths(Map<String, UnitWord> all) {
    Unit.Kind length = Unit.Kind.LENGTH;
    add(
        all,
        "length",
        1,
        length,
        1,
        "ft foot feet lf 'lin ft' 'lineal ft' 'linear ft' 'linear feet' '");
    add(all, "length", 1, length, 1 / 12.0, "in inch inches \"");
    add(all, "length", 1, length, 3, "yd yard yards");
    add(all, "length", 1, length, METRE, "m metre metres meter meters");
    add(all, "length", 1, length, METRE / 100, "cm centimetre centimetres");
    add(all, "length", 1, length, METRE / 1000, "mm millimetre millimetres");
  }

  private static void addMoney(Map<String, UnitWord> all) {
    add(all, "money USD", 1, Unit.Kind.MONEY, 1, "$ usd dollar dollars");
    add(all, "money USD", 1, Unit.Kind.MONEY, 0.01, "cent cents ¢");
    add(all, "money EUR", 1, Unit.Kind.MONEY, 1, "€ eur euro euros");
    add(all, "money GBP", 1, Unit.Kind.MONEY, 1, "£ gbp");
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
    COUNTED.forEach(word -> pack(all, Unit.Kind.COUNT, word + " " + word + "s"));
  }

  private static void pack(Map<String, UnitWord> all, Unit.Kind kind, String words) {
    String word = words.substring(0, words.indexOf(' '));
    add(all, word, 1, kind, 1, words);
  }

  private static void add(
      Map<String, UnitWord> all,
      String dimension,
      int degree,
      Unit.Kind kind,
      double size,
      String spellings) {
    List<String> words = UnitText.words(spellings);
    int order = dimension.startsWith("money") ? 0 : dimension.equals("length") ? 1 : 2;
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

  /** Whether it is counted one by one: pieces, courses, rows. */
  boolean isCount() {
    return ONE_BY_ONE.contains(word);
  }

  @Override
  public int compareTo(UnitWord other) {
    return order != other.order ? Integer.compare(order, other.order) : word.compareTo(other.word);
  }
}
