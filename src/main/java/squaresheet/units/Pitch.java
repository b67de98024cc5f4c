package squaresheet.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The steepness of a roof plane: inches of rise for every 12 inches of level run.
 *
 * <p>Range: 0:12 (flat) to 24:12, both included. Text form: {@code 6:12}, {@code 4.5:12}.
 *
 * @param rise inches of rise per 12 of run, without trailing zeros, at most 12 decimals
 */
public record Pitch(BigDecimal rise) implements Comparable<Pitch> {

  private static final double RUN = 12;
  private static final BigDecimal STEEPEST = BigDecimal.valueOf(24);
  /** Enough that a pitch given in degrees keeps every digit a double has. */
  private static final int DECIMALS = 12;

  private static final Pattern TEXT = Pattern.compile("(\\d+(?:\\.\\d+)?):12");

  public Pitch {
    rise = rise.setScale(DECIMALS, RoundingMode.HALF_UP);
    if (rise.signum() < 0 || rise.compareTo(STEEPEST) > 0) {
      throw new IllegalArgumentException("pitch must rise 0 to 24 inches per 12, but rises "
          + rise.stripTrailingZeros().toPlainString());
    }
    rise = rise.stripTrailingZeros();
    rise = rise.scale() < 0 ? rise.setScale(0) : rise;
  }

  /** The pitch of {@code rise} whole inches per 12. */
  public static Pitch of(long rise) {
    return new Pitch(BigDecimal.valueOf(rise));
  }

  /** The pitch of a rise over a run, both in the same unit; a rise per 12 that does not end is kept to 12 decimals. */
  public static Pitch of(BigDecimal rise, BigDecimal run) {
    if (run.signum() <= 0) {
      throw new IllegalArgumentException(
          "run of a pitch must be more than 0, but is " + run.toPlainString());
    }
    return new Pitch(
        rise.multiply(BigDecimal.valueOf(12)).divide(run, DECIMALS, RoundingMode.HALF_UP));
  }

  /** The pitch of an angle in degrees from the level, 0 to about 63.435. */
  public static Pitch nearestDegrees(double degrees) {
    return new Pitch(BigDecimal.valueOf(RUN * Math.tan(Math.toRadians(degrees))));
  }

  /** The pitch of a slope in percent of the run, 0 to 200. */
  public static Pitch ofPercent(BigDecimal percent) {
    return of(percent, BigDecimal.valueOf(100));
  }

  /**
   * Reads the text form, strictly.
   *
   * @throws IllegalArgumentException with a sentence, if the text is not one
   */
  public static Pitch parse(String text) {
    Matcher parts = TEXT.matcher(text);
    if (!parts.matches()) {
      throw new IllegalArgumentException(
          "pitch must read like 6:12 or 4.5:12, but reads '" + text + "'");
    }
    return new Pitch(new BigDecimal(parts.group(1)));
  }

  /** Sloped area over plan area: √(1 + (rise/12)²), from 1 (flat) to √5 (24:12). */
  public double factor() {
    return Math.hypot(1, slope());
  }

  /** Hip or valley length per unit of common run, both roofs at this pitch, square corner: √(2 + (rise/12)²). */
  public double hipFactor() {
    return Math.sqrt(2 + slope() * slope());
  }

  /**
   * Hip or valley length per unit of this side's common run, where the other side of a square corner has another pitch:
   * √(1 + (m/m')² + m²).
   *
   * @throws IllegalArgumentException if the other pitch is flat
   */
  public double hipFactor(Pitch other) {
    if (other.isFlat()) {
      throw new IllegalArgumentException(
          "the other side of a hip must slope, but its pitch is 0:12");
    }
    double ratio = slope() / other.slope();
    return Math.sqrt(1 + ratio * ratio + slope() * slope());
  }

  /** The pitch along the hip or valley itself, both roofs at this pitch, square corner: the same rise on √2 of the run. */
  public Pitch alongHip() {
    return new Pitch(BigDecimal.valueOf(rise.doubleValue() / Math.sqrt(2)));
  }

  /** Rise over run as a plain ratio, 0 to 2. */
  public double slope() {
    return rise.doubleValue() / RUN;
  }

  /** The angle from the level, in degrees. */
  public double toDegrees() {
    return Math.toDegrees(Math.atan(slope()));
  }

  /** The slope in percent of the run. */
  public double toPercent() {
    return slope() * 100;
  }

  /** Whether this is 0:12. */
  public boolean isFlat() {
    return rise.signum() == 0;
  }

  /** The area on a slope of this pitch that covers {@code plan}. */
  public Area.Sloped slope(Area.Plan plan) {
    return new Area.Sloped(plan.squareFeet() * factor());
  }

  /** The area seen from above of {@code sloped} on this pitch. */
  public Area.Plan plan(Area.Sloped sloped) {
    return new Area.Plan(sloped.squareFeet() / factor());
  }

  /** The length up a slope of this pitch over a level run. */
  public DerivedLength slope(Length run) {
    return new DerivedLength(run.toInches() * factor());
  }

  /**
   * What a pitch may be that was written as an angle or in percent: figures are rounded, or cut off.
   *
   * @param written the pitch by the figure as it stands
   * @param least the least it may be
   * @param most the most it may be
   * @param named the pitch in half inches of rise that was rounded to the figure; empty where the figure is too coarse to say
   */
  public record Span(Pitch written, Pitch least, Pitch most, Optional<Pitch> named) {

    /** The pitch to work with: the named one, else as written. */
    public Pitch taken() {
      return named.orElse(written);
    }

    /** Whether it may be this pitch. */
    public boolean holds(Pitch pitch) {
      return least.compareTo(pitch) <= 0 && pitch.compareTo(most) <= 0;
    }

    /** For people: {@code 3.78:12 to 4.13:12}. */
    public String show() {
      return least.show() + " to " + most.show();
    }
  }

  /** Whether it is a whole number of half inches, as people name pitches. */
  public boolean isNamed() {
    return rise.signum() > 0 && rise.add(rise).stripTrailingZeros().scale() <= 0;
  }

  @Override
  public int compareTo(Pitch other) {
    return rise.compareTo(other.rise);
  }

  /** For people: the rise to two decimals, so that a pitch measured in degrees can be read. */
  public String show() {
    BigDecimal shown = rise.setScale(Math.min(2, Math.max(0, rise.scale())), RoundingMode.HALF_UP);
    return (shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString()) + ":12";
  }

  @Override
  public String toString() {
    return rise.toPlainString() + ":12";
  }
}
