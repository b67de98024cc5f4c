package squaresheet.estimate;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import squaresheet.finding.Where;
import squaresheet.units.Unit;

/**
 * A rate of the company: hours or money for each unit of a quantity of the takeoff, for planes within a band of pitch and
 * buildings within a band of height.
 *
 * @param item what is done or paid for; rates of one item divide the work between them by their bands
 * @param category what its lines are for
 * @param costCode the company's code, or empty
 * @param quantity the takeoff's name for how much there is to do; empty where it is paid once
 * @param amount hours or money for one unit of it, 0 or more
 * @param unit such as {@code hour/square}, {@code $/square} or {@code $}
 * @param crew for hours, the name of the loaded rate they are paid at; empty for money
 * @param band the pitches and stories it is for
 * @param places the place of each of these, by its name
 */
public record Rate(
    String item,
    Category category,
    String costCode,
    String quantity,
    BigDecimal amount,
    Unit unit,
    String crew,
    Band band,
    Function<String, Where> places) {

  private static final Unit HOUR = Unit.parse("hour");
  private static final Unit DOLLAR = Unit.parse("$");

  /** A rate that stands in no list. */
  public Rate(
      String item,
      Category category,
      String costCode,
      String quantity,
      BigDecimal amount,
      Unit unit,
      String crew,
      Band band) {
    this(
        item,
        category,
        costCode,
        quantity,
        amount,
        unit,
        crew,
        band,
        part -> new Where.OfItem("rate " + item, part));
  }

  /**
   * What a rate of 1 comes to for one of its quantity.
   *
   * @param unit hours or money
   * @param size so much of it
   */
  public record Paid(Unit unit, double size) {}

  /**
   * Pitches and stories, each from a number, included, up to another, not included.
   *
   * @param pitchFrom rise per 12
   * @param pitchBelow rise per 12
   * @param storiesFrom stories
   * @param storiesBelow stories
   */
  public record Band(
      BigDecimal pitchFrom,
      BigDecimal pitchBelow,
      BigDecimal storiesFrom,
      BigDecimal storiesBelow) {

    /** Where a band that is open above ends: past the steepest pitch and the tallest house. */
    public static final BigDecimal OPEN = BigDecimal.valueOf(1000);

    /** Whether it leaves any pitch out. */
    boolean limitsPitch() {
      return pitchFrom.signum() > 0 || pitchBelow.compareTo(OPEN) < 0;
    }

    boolean holdsPitch(double rise) {
      return pitchFrom.doubleValue() <= rise && rise < pitchBelow.doubleValue();
    }

    boolean holdsStories(double stories) {
      return storiesFrom.doubleValue() <= stories && stories < storiesBelow.doubleValue();
    }

    /** For people: {@code 6:12 up to 9:12}. */
    String show() {
      return pitchFrom.toPlainString() + ":12 up to " + pitchBelow.toPlainString() + ":12";
    }
  }

  /** What a rate of 1 comes to for a quantity in that unit; nothing where that is neither hours of a crew nor else money. */
  public Optional<Paid> paid(Unit quantity, String currency) {
    Unit product = unit.times(quantity);
    Stream<Unit> wanted =
        isHours() ? Stream.of(HOUR) : Stream.concat(Stream.of(DOLLAR), money(currency).stream());
    return wanted.filter(product::isLike).findFirst().map(it -> new Paid(it, product.factorTo(it)));
  }

  /** The unit of the currency; many have none, and a plain dollar is that of the terms. */
  private static Optional<Unit> money(String currency) {
    try {
      return Optional.of(Unit.parse(currency));
    } catch (IllegalArgumentException unnamed) {
      return Optional.empty();
    }
  }

  /** Whether the other rate is for the same work, of the same quantity and band. */
  boolean isTwiceOf(Rate other) {
    return item.equalsIgnoreCase(other.item)
        && quantity.equals(other.quantity)
        && band.equals(other.band);
  }

  Where at(String part) {
    return places.apply(part);
  }

  /** Whether it is a rate of hours. */
  public boolean isHours() {
    return !crew.isEmpty();
  }
}
