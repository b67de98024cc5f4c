package squaresheet.units;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the library gives for a row about slopes, by the kind of quantity and the wording of the inputs. */
final class ReferenceSlopes {

  private static final String NUMBER = "(\\d+(?:\\.\\d+)?(?: \\d+/\\d+)?)";
  private static final String UNIT = "(?: ?(in|mm|cm|m|ft)\\b)?";
  private static final Pattern RISE_AND_RUN = Pattern.compile(
      NUMBER + UNIT + " ?(?:in|per|on|over|to|/|:|, ?run) ?" + NUMBER + UNIT,
      Pattern.CASE_INSENSITIVE);
  private static final Pattern HOUSE =
      Pattern.compile(NUMBER + " ft wide, ridge " + NUMBER + " ft above plate");
  private static final Pattern DEGREES = Pattern.compile(NUMBER + " ?(?:°|degrees?|deg)");
  private static final Pattern PERCENT = Pattern.compile(NUMBER + " ?(?:%|percent)");
  private static final Pattern SQUARE_CORNER =
      Pattern.compile(NUMBER + UNIT + " x " + NUMBER + UNIT);
  private static final Pattern LEVEL_AREA = Pattern.compile("(\\d+) sq ft level");
  private static final Pattern PER_RUN =
      Pattern.compile("(?:per|for) (?:" + NUMBER + " (mm|in|ft|m|cm)|(foot))");

  private ReferenceSlopes() {}

  /** The library's own value; empty where it has no such quantity. */
  static OptionalDouble value(ReferenceRow row) {
    String quantity = row.quantity().toLowerCase(Locale.ROOT);
    if (quantity.contains("unit run of a regular hip") || quantity.contains("hip run")) {
      return hipRun(row);
    }
    List<Pitch> pitches = pitches(row.inputs());
    return pitches.isEmpty()
        ? OptionalDouble.empty()
        : value(quantity, row, pitches.get(0), unequal(row, pitches));
  }

  private static OptionalDouble value(
      String quantity, ReferenceRow row, Pitch pitch, Optional<Pitch> other) {
    if (quantity.contains("angle")) {
      boolean hip = quantity.contains("hip") || quantity.contains("valley");
      return OptionalDouble.of(hip ? pitch.alongHip().toDegrees() : pitch.toDegrees());
    }
    if (quantity.contains("percent")) {
      return OptionalDouble.of(pitch.toPercent());
    }
    if (quantity.contains("rise over span")) {
      return OptionalDouble.of(pitch.slope() / 2);
    }
    if (quantity.contains("hip") || quantity.contains("valley")) {
      double factor = other.map(pitch::hipFactor).orElseGet(pitch::hipFactor);
      return scaled(quantity, row, factor);
    }
    return quantity.contains("rafter")
        ? scaled(quantity, row, pitch.factor())
        : area(quantity + " " + row.inputs(), pitch);
  }

  /** A factor as it is, or as the length over the run that the quantity names. */
  private static OptionalDouble scaled(String quantity, ReferenceRow row, double factor) {
    Matcher run = PER_RUN.matcher(quantity);
    if (row.unit().equals("ratio") || !run.find()) {
      return row.unit().equals("ratio") ? OptionalDouble.of(factor) : OptionalDouble.empty();
    }
    Length base = run.group(3) != null ? Length.of(1, 0) : length(run.group(1), run.group(2));
    return OptionalDouble.of(in(row.unit(), base.toDerived().times(factor)));
  }

  private static OptionalDouble area(String quantity, Pitch pitch) {
    Matcher level = LEVEL_AREA.matcher(quantity);
    if (level.find()) {
      Area.Plan plan = new Area.Plan(Double.parseDouble(level.group(1)));
      return OptionalDouble.of(pitch.slope(plan).squareFeet());
    }
    return quantity.contains("multiplier") || quantity.contains("factor")
        ? OptionalDouble.of(pitch.factor())
        : OptionalDouble.empty();
  }

  /** On the level a hip is the diagonal of its square corner. */
  private static OptionalDouble hipRun(ReferenceRow row) {
    Matcher corner = SQUARE_CORNER.matcher(row.inputs());
    if (!corner.find()) {
      return OptionalDouble.empty();
    }
    Length side = length(corner.group(1), corner.group(2));
    return OptionalDouble.of(in(row.unit(), side.toDerived().times(Pitch.of(0).hipFactor())));
  }

  private static Optional<Pitch> unequal(ReferenceRow row, List<Pitch> pitches) {
    boolean isHip =
        row.quantity().matches(".*(?i)(unequal|irregular|different pitch|two pitches).*")
            || row.inputs().matches(".*(?i)(side|main|other|meets|against|and).*");
    return isHip && pitches.size() == 2 ? Optional.of(pitches.get(1)) : Optional.empty();
  }

  private static List<Pitch> pitches(String inputs) {
    List<Pitch> found = new ArrayList<>();
    Matcher house = HOUSE.matcher(inputs);
    if (house.find()) {
      BigDecimal halfSpan = number(house.group(1)).divide(BigDecimal.valueOf(2));
      found.add(Pitch.of(number(house.group(2)), halfSpan));
      return found;
    }
    Matcher ratio = RISE_AND_RUN.matcher(inputs);
    while (ratio.find()) {
      found.add(Pitch.of(number(ratio.group(1)), number(ratio.group(3))));
    }
    Matcher degrees = DEGREES.matcher(inputs);
    while (found.isEmpty() && degrees.find()) {
      found.add(Pitch.nearestDegrees(number(degrees.group(1)).doubleValue()));
    }
    Matcher percent = PERCENT.matcher(inputs);
    while (found.isEmpty() && percent.find()) {
      found.add(Pitch.ofPercent(number(percent.group(1))));
    }
    return found;
  }

  static BigDecimal number(String text) {
    String[] parts = text.split(" ");
    BigDecimal whole = new BigDecimal(parts[0]);
    if (parts.length == 1) {
      return whole;
    }
    String[] fraction = parts[1].split("/");
    return whole.add(new BigDecimal(fraction[0]).divide(new BigDecimal(fraction[1])));
  }

  static Length length(String number, String unit) {
    BigDecimal value = number(number);
    return switch (unit == null ? "in" : unit) {
      case "ft" -> Length.fromInches(value.multiply(BigDecimal.valueOf(12)));
      case "mm" -> Length.fromMillimetres(value);
      case "cm" -> Length.fromMillimetres(value.movePointRight(1));
      case "m" -> Length.fromMillimetres(value.movePointRight(3));
      default -> Length.fromInches(value);
    };
  }

  static double in(String unit, DerivedLength length) {
    return switch (unit) {
      case "ft" -> length.toFeet();
      case "m" -> length.toMetres();
      case "cm" -> length.toMetres() * 100;
      case "mm" -> length.toMetres() * 1000;
      case "km" -> length.toMetres() / 1000;
      default -> length.inches();
    };
  }
}
