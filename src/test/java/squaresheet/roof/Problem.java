package squaresheet.roof;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** What is given in a worked problem, read from its title, and the row being answered. */
record Problem(String title, Map<String, String> row) {

  private static final String FEET = "(\\d+(?:\\.\\d+)?) ft(?: (\\d+) in)?";
  private static final Pattern RUN = Pattern.compile("\\brun " + FEET);
  private static final Pattern SPAN =
      Pattern.compile("(?:span |width )" + FEET + "|" + FEET + "(?: span| wide)");
  private static final Pattern METRIC_SPAN = Pattern.compile("span (\\d{3,})(?: mm)?\\b");
  private static final Pattern METRIC_PITCH = Pattern.compile("(\\d+) per (\\d+) mm");
  private static final Pattern RISE =
      Pattern.compile("(\\d+(?:\\.\\d+)?) in (?:unit rise|per ft|per 12|per foot|12\\b)");
  private static final Pattern RISE_OVER_RUN = Pattern.compile("run " + FEET + ", rise " + FEET);
  private static final Pattern RECTANGLE =
      Pattern.compile("(\\d+(?:\\.\\d+)?) x (\\d+(?:\\.\\d+)?)");
  private static final Map<String, Integer> NAMED =
      Map.of("quarter pitch", 6, "third pitch", 8, "half pitch", 12);

  String get(String column) {
    return row.get(column);
  }

  String quantity() {
    return get("quantity").toLowerCase(Locale.ROOT);
  }

  private String given() {
    return title + "; " + get("inputs");
  }

  /** From eave to ridge, level. */
  Optional<Length> run() {
    Matcher metric = METRIC_SPAN.matcher(title);
    if (metric.find()) {
      return Optional.of(
          Length.fromMillimetres(new BigDecimal(metric.group(1)).divide(BigDecimal.valueOf(2))));
    }
    Matcher run = RUN.matcher(given());
    if (run.find()) {
      return Optional.of(feet(run.group(1), run.group(2)));
    }
    Matcher span = SPAN.matcher(given());
    return span.find()
        ? Optional.of(new Length((span.group(1) == null
                    ? feet(span.group(3), span.group(4))
                    : feet(span.group(1), span.group(2)))
                .units()
            / 2))
        : Optional.empty();
  }

  /** The pitch, by the words of the quantity if they give one, else by the title. */
  Optional<Pitch> pitch() {
    Matcher metric = METRIC_PITCH.matcher(title);
    if (metric.find()) {
      return Optional.of(
          Pitch.of(new BigDecimal(metric.group(1)), new BigDecimal(metric.group(2))));
    }
    Matcher rise = RISE.matcher(quantity() + "; " + given());
    if (rise.find()) {
      return Optional.of(new Pitch(new BigDecimal(rise.group(1))));
    }
    Matcher over = RISE_OVER_RUN.matcher(title);
    if (over.find()) {
      return Optional.of(Pitch.of(
          BigDecimal.valueOf(feet(over.group(3), over.group(4)).units()),
          BigDecimal.valueOf(feet(over.group(1), over.group(2)).units())));
    }
    return NAMED.entrySet().stream()
        .filter(named -> title.contains(named.getKey()))
        .map(named -> Pitch.of(named.getValue()))
        .findFirst();
  }

  /** The unit of run that the source steps off: 12 in, or what its metric pitch is given over. */
  Length unitRun() {
    Matcher metric = METRIC_PITCH.matcher(title);
    return metric.find()
        ? Length.fromMillimetres(new BigDecimal(metric.group(2)))
        : Length.ofInches(12);
  }

  /** The rectangles in feet that the inputs list, such as {@code 30 x 60 + 30 x 15}; empty where they list none. */
  static List<Shape.Rectangle> rectangles(String inputs) {
    List<Shape.Rectangle> found = new ArrayList<>();
    if (!inputs.matches("[\\d.x +]+")) {
      return found;
    }
    Matcher sizes = RECTANGLE.matcher(inputs);
    while (sizes.find()) {
      found.add(new Shape.Rectangle(feet(sizes.group(1), null), feet(sizes.group(2), null)));
    }
    return found;
  }

  private static Length feet(String feet, String inches) {
    BigDecimal total = new BigDecimal(feet)
        .multiply(BigDecimal.valueOf(12))
        .add(inches == null ? BigDecimal.ZERO : new BigDecimal(inches));
    return Length.fromInches(total);
  }
}
