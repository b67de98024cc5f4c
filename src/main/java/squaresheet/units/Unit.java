package squaresheet.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a number counts: feet, plan square feet, squares, bundles, dollars per bundle.
 *
 * <p>Text forms: {@code ft}, {@code sq ft}, {@code sq ft plan}, {@code sq ft sloped}, {@code square}, {@code bundle},
 * {@code $}, {@code hour}, {@code %}, {@code ratio}, {@code pitch}, and what comes of multiplying and dividing them:
 * {@code $/bundle}, {@code sq ft/bundle}, {@code hour/square}. Equal units are written in one way.
 */
public final class Unit {

  /** What sort of thing is measured or counted, whatever the size of the unit. */
  public enum Kind {
    /** A length in any unit. */
    LENGTH,
    /** An area that does not say whether it lies in plan or on the slope. */
    AREA,
    /** An area seen from above. */
    PLAN_AREA,
    /** An area on the slope. */
    SLOPED_AREA,
    /** Squares of 100 sq ft. */
    SQUARES,
    /** A volume in any unit. */
    VOLUME,
    /** Single pieces. */
    PIECES,
    /** Bundles. */
    BUNDLES,
    /** Rolls. */
    ROLLS,
    /** Boxes. */
    BOXES,
    /** Sheets. */
    SHEETS,
    /** Any other thing that is counted: coils, courses, layers. */
    COUNT,
    /** Money of one currency. */
    MONEY,
    /** Working time. */
    HOURS,
    /** Weight. */
    WEIGHT,
    /** A plain ratio. */
    RATIO,
    /** Rise per 12 of run. */
    PITCH,
    /** An angle. */
    ANGLE,
    /** One thing per another, such as dollars per bundle. */
    RATE,
    /** Any other product. */
    OTHER
  }

  /** A plain ratio: 0.10 is ten percent. */
  public static final Unit RATIO = new Unit(Map.of(), Kind.AREA);

  private final TreeMap<UnitWord, Integer> powers;
  /** AREA, PLAN_AREA or SLOPED_AREA; only told where this is an area. */
  private final Kind side;

  private Unit(Map<UnitWord, Integer> powers, Kind side) {
    this.powers = new TreeMap<>(powers);
    this.powers.values().removeIf(power -> power == 0);
    this.side = isArea() ? side : Kind.AREA;
  }

  /**
   * Reads the text form and the usual other spellings ({@code feet}, {@code SF}, {@code ft²}, {@code per bundle}).
   *
   * @throws IllegalArgumentException with a sentence, if the text is not one
   */
  public static Unit parse(String text) {
    return new UnitText(text).unit();
  }

  static Unit of(UnitWord word, int power) {
    return new Unit(Map.of(word, power), Kind.AREA);
  }

  /** What sort of thing this measures. */
  public Kind kind() {
    if (powers.isEmpty()) {
      return Kind.RATIO;
    }
    if (powers.size() == 1) {
      return alone(powers.firstKey(), powers.firstEntry().getValue());
    }
    Map<String, Integer> dimensions = dimensions();
    if (dimensions.isEmpty()) {
      return Kind.RATIO;
    }
    boolean rate = dimensions.values().stream().anyMatch(power -> power < 0);
    return rate ? Kind.RATE : Kind.OTHER;
  }

  private Kind alone(UnitWord word, int power) {
    if (power < 0) {
      return Kind.RATE;
    }
    if (word.kind() == Kind.LENGTH && power > 1) {
      return power == 2 ? side : power == 3 ? Kind.VOLUME : Kind.OTHER;
    }
    return power == 1 ? word.kind() : Kind.OTHER;
  }

  /** This area, said to be of the given kind: AREA, PLAN_AREA or SLOPED_AREA; any other unit stays as it is. */
  public Unit as(Kind areaKind) {
    return new Unit(powers, areaKind);
  }

  /** Which area this is: PLAN_AREA or SLOPED_AREA where it says so, otherwise AREA. */
  public Kind side() {
    return side;
  }

  /** Whether this measures an area, in squares or in square lengths. */
  public boolean isArea() {
    return dimensions().equals(Map.of("length", 2));
  }

  /** The unit of a product. */
  public Unit times(Unit other) {
    return combined(other, 1);
  }

  /** The unit of a quotient. */
  public Unit over(Unit other) {
    return combined(other, -1);
  }

  private Unit combined(Unit other, int sign) {
    Map<UnitWord, Integer> sum = new TreeMap<>(powers);
    other.powers.forEach((word, power) -> sum.merge(word, sign * power, Integer::sum));
    Kind told = side != Kind.AREA ? side : other.side;
    return new Unit(sum, told);
  }

  /** The unit of a whole power of a number in this unit. */
  public Unit power(int exponent) {
    Map<UnitWord, Integer> raised = new TreeMap<>();
    powers.forEach((word, power) -> raised.put(word, power * exponent));
    return new Unit(raised, side);
  }

  /** The unit of a square root, if every power is even; otherwise this unit has none and an exception is thrown. */
  public Unit squareRoot() {
    Map<UnitWord, Integer> halves = new TreeMap<>();
    powers.forEach((word, power) -> {
      if (power % 2 != 0) {
        throw new IllegalArgumentException("square root needs an even unit, but got " + this);
      }
      halves.put(word, power / 2);
    });
    return new Unit(halves, Kind.AREA);
  }

  /** What is measured, as powers of plain dimensions ({@code length}, {@code money USD}, {@code bundle}). */
  Map<String, Integer> dimensions() {
    Map<String, Integer> sum = new TreeMap<>();
    powers.forEach(
        (word, power) -> sum.merge(word.dimension(), word.degree() * power, Integer::sum));
    sum.values().removeIf(power -> power == 0);
    sum.remove("");
    return sum;
  }

  /** Whether numbers of the two units measure the same thing, whatever the sizes: ft and in; sq ft and squares. */
  public boolean isLike(Unit other) {
    return dimensions().equals(other.dimensions());
  }

  /** Whether one says plan and the other sloped. */
  public boolean isOtherSideOf(Unit other) {
    return side != Kind.AREA && other.side != Kind.AREA && side != other.side;
  }

  /**
   * What a number of this unit is multiplied by to get the number of the other: 12 from ft to in.
   *
   * @throws IllegalArgumentException if the two measure different things
   */
  public double factorTo(Unit other) {
    if (!isLike(other)) {
      throw new IllegalArgumentException("cannot turn " + this + " into " + other);
    }
    return size() / other.size();
  }

  private double size() {
    double size = 1;
    for (Map.Entry<UnitWord, Integer> entry : powers.entrySet()) {
      size *= Math.pow(entry.getKey().size(), entry.getValue());
    }
    return size;
  }

  /** What should have cancelled and did not, as a sentence such as {@code turn in into ft first}; empty where all did. */
  public Optional<String> uncancelled() {
    for (UnitWord above : powers.keySet()) {
      for (UnitWord below : powers.keySet()) {
        boolean opposed = powers.get(above) > 0 && powers.get(below) < 0;
        if (opposed
            && above.dimension().equals(below.dimension())
            && !above.dimension().isEmpty()) {
          return Optional.of("turn " + above.word() + " into " + below.word() + " first");
        }
      }
    }
    return Optional.empty();
  }

  /** Whether something of the quantity cancels against the rate when this product is made of them. */
  public boolean cancelsBetween(Unit quantity, Unit rate) {
    Map<String, Integer> below = rate.dimensions();
    return quantity.dimensions().entrySet().stream()
        .anyMatch(entry -> entry.getValue() * below.getOrDefault(entry.getKey(), 0) < 0);
  }

  /**
   * This unit without what is counted one by one. Three courses of 5 in are 15 in, and a row of shingles is so many pieces:
   * pieces, courses, rows and layers may be named or left out, bundles and rolls may not.
   */
  public Unit withoutCounts() {
    Map<UnitWord, Integer> kept = new TreeMap<>(powers);
    kept.keySet().removeIf(UnitWord::isCount);
    return kept.size() == powers.size() ? this : new Unit(kept, side);
  }

  /** Whether this is so many pieces, or courses, for one of something: {@code piece/bundle}. */
  public boolean isCountEach() {
    return powers.entrySet().stream()
        .filter(entry -> entry.getValue() > 0)
        .allMatch(entry -> entry.getKey().isCount());
  }

  /** Whether money is in it, alone or for one of something. */
  public boolean isMoney() {
    return powers.keySet().stream().anyMatch(word -> word.kind() == Kind.MONEY);
  }

  /** Whether it counts packs or pieces and nothing else: bundles, rolls, boxes, pieces. */
  public boolean isCounted() {
    return powers.size() == 1
        && powers.firstEntry().getValue() == 1
        && List.of(Kind.BUNDLES, Kind.ROLLS, Kind.BOXES, Kind.SHEETS, Kind.PIECES, Kind.COUNT)
            .contains(kind());
  }

  /** For people: a number with this unit, {@code 12 ft}, {@code $1.25/bundle}, {@code 10 %}. */
  public String show(String number) {
    String unit = toString();
    if (unit.equals("ratio")) {
      return number;
    }
    return unit.startsWith("$") ? "$" + number + unit.substring(1) : number + " " + unit;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Unit unit && powers.equals(unit.powers) && side == unit.side;
  }

  @Override
  public int hashCode() {
    return powers.hashCode() * 31 + side.hashCode();
  }

  @Override
  public String toString() {
    List<String> above = new ArrayList<>();
    List<String> below = new ArrayList<>();
    powers.forEach((word, power) -> (power > 0 ? above : below).add(word.spelled(Math.abs(power))));
    String top = above.isEmpty() ? (below.isEmpty() ? "ratio" : "1") : String.join("·", above);
    String bottom = below.stream().map(word -> "/" + word).collect(Collectors.joining());
    String told =
        side == Kind.AREA ? "" : " " + side.name().replace("_AREA", "").toLowerCase(Locale.ROOT);
    return top + bottom + told;
  }
}
