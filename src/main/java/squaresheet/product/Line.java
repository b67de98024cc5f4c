package squaresheet.product;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.finding.Finding;
import squaresheet.finding.OwnWords;
import squaresheet.tape.NumberReader;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** One row of the catalogue, being read: its cells, and what could not be understood so far. */
final class Line {

  private static final int DECIMALS = 9;

  /** 13 1/4 or 1/2. */
  private static final Pattern MIXED = Pattern.compile("(?:(\\d{1,9}) )?(\\d{1,9})/(\\d{1,6})");

  private static final BigDecimal CENTIMETRE = BigDecimal.TEN;
  private static final BigDecimal METRE = BigDecimal.valueOf(1000);
  private static final BigDecimal FOOT = BigDecimal.valueOf(12);
  /** Square inches in a square centimetre, over one: 2.54 squared. */
  private static final BigDecimal SQUARE_CENTIMETRES = new BigDecimal("6.4516");

  private final Headings headings;
  private final Map<String, String> cells;
  private final Function<String, squaresheet.finding.Where> places;
  private final List<Finding> findings = new ArrayList<>();

  Line(Headings headings, Catalogue.Row row) {
    this.headings = headings;
    this.cells = row.cells();
    this.places = row.places();
  }

  List<Finding> findings() {
    return findings;
  }

  boolean isUnreadable() {
    return findings.stream().anyMatch(Finding::isError);
  }

  void says(squaresheet.finding.CheckInfo info, String column, String sentence) {
    String heading = headings.of(column).map(Headings.Heading::text).orElse(column);
    findings.add(new Finding(info, places.apply(heading), sentence));
  }

  String text(String column) {
    return headings
        .of(column)
        .map(heading -> cells.getOrDefault(heading.text(), "").strip())
        .orElse("");
  }

  String required(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      says(Complaints.NOT_READ, column, column + " must be stated, but is empty");
    }
    return text;
  }

  long count(String column, long otherwise) {
    String text = text(column);
    if (text.isEmpty()) {
      return otherwise;
    }
    Optional<BigDecimal> number =
        number(text).filter(it -> it.stripTrailingZeros().scale() <= 0);
    if (number.isEmpty()) {
      says(
          Complaints.NOT_READ,
          column,
          column + " must be a whole number like 21, but reads '" + text + "'");
    }
    return number.map(BigDecimal::longValueExact).orElse(otherwise);
  }

  private static Optional<BigDecimal> number(String text) {
    return NumberReader.POINT.amount(text, DECIMALS);
  }

  /** A length, or an inch with a complaint: the row is then dropped anyway. */
  Length length(String column) {
    return required(column).isEmpty() ? Length.ofInches(1) : optionalLength(column);
  }

  Length optionalLength(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      return Length.ZERO;
    }
    return plainLength(text, unitOf(column)).or(() -> tapeLength(text)).orElseGet(() -> {
      says(
          Complaints.NOT_READ,
          column,
          column
              + " must read like 13.25, 13 1/4 or 1' 1 1/4\" and be whole in 64ths of an inch or tenths of a millimetre, but reads '"
              + text + "'");
      return Length.ofInches(1);
    });
  }

  private String unitOf(String column) {
    return headings.of(column).map(Headings.Heading::unit).orElse("");
  }

  private static Optional<Length> tapeLength(String text) {
    try {
      return Optional.of(Length.parse(text));
    } catch (IllegalArgumentException | ArithmeticException notInThatForm) {
      return Optional.empty();
    }
  }

  private static Optional<Length> plainLength(String text, String unit) {
    Matcher number = MIXED.matcher(text);
    try {
      return number.matches()
          ? Optional.of(in(
              unit,
              new BigDecimal(whole(number) * over(number) + Long.parseLong(number.group(2))),
              over(number)))
          : number(text).map(decimal -> in(unit, decimal, 1));
    } catch (ArithmeticException notOnATape) {
      return Optional.empty();
    }
  }

  private static long whole(Matcher number) {
    return number.group(1) == null ? 0 : Long.parseLong(number.group(1));
  }

  private static long over(Matcher number) {
    return Long.parseLong(number.group(3));
  }

  private static Length in(String unit, BigDecimal number, long over) {
    BigDecimal divisor = BigDecimal.valueOf(over);
    return switch (unit) {
      case "in" -> exactInches(number, divisor);
      case "ft" -> exactInches(number.multiply(FOOT), divisor);
      case "mm" -> Length.fromMillimetres(number.divide(divisor));
      case "cm" -> Length.fromMillimetres(number.multiply(CENTIMETRE).divide(divisor));
      default -> Length.fromMillimetres(number.multiply(METRE).divide(divisor));
    };
  }

  private static Length exactInches(BigDecimal number, BigDecimal divisor) {
    BigDecimal perInch = BigDecimal.valueOf(Length.ofInches(1).units());
    return new Length(number.multiply(perInch).divide(divisor).longValueExact());
  }

  Weight weight(String column) {
    BigDecimal number = decimal(column, BigDecimal.ZERO);
    return unitOf(column).equals("kg") ? Weight.nearestKilograms(number) : new Weight(number);
  }

  BigDecimal squareInches(String column) {
    BigDecimal number = decimal(column, BigDecimal.ZERO);
    return unitOf(column).equals("sq_cm")
        ? number.divide(SQUARE_CENTIMETRES, 9, java.math.RoundingMode.HALF_UP)
        : number;
  }

  BigDecimal decimal(String column, BigDecimal otherwise) {
    String text = text(column);
    if (text.isEmpty()) {
      return otherwise;
    }
    Optional<BigDecimal> number = number(text);
    if (number.isEmpty()) {
      says(
          Complaints.NOT_READ,
          column,
          column + " must be a number like 68 or 33.3, but reads '" + text + "'");
    }
    return number.orElse(otherwise);
  }

  /** A number that this kind of product has no use for, in the unit that a catalogue is written in. */
  Optional<BigDecimal> unused(String column) {
    String text = text(column);
    if (Headings.isLength(column)) {
      return plainLength(text, unitOf(column))
          .or(() -> tapeLength(text))
          .map(length -> BigDecimal.valueOf(length.toInches()));
    }
    return number(text).map(number -> switch (unitOf(column)) {
      case "kg" -> weight(column).pounds();
      case "sq_cm" -> squareInches(column);
      default -> number;
    });
  }

  Pitch pitch(String column, Pitch otherwise) {
    String text = text(column);
    if (text.isEmpty()) {
      return otherwise;
    }
    try {
      return number(text).map(Pitch::new).orElseGet(() -> Pitch.parse(text));
    } catch (IllegalArgumentException unreadable) {
      says(Complaints.NOT_READ, column, OwnWords.of(unreadable));
      return otherwise;
    }
  }
}
