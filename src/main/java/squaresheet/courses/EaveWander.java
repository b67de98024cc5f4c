package squaresheet.courses;

import java.util.Comparator;
import java.util.List;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/**
 * An eave that is not straight under a starter line that is: the overhang at every measured station.
 *
 * @param starterHeight the height of the starter as laid
 * @param limits how far the first course may hang over
 * @param readings the distance from the snapped line down to the eave edge at each station; at least one
 */
public record EaveWander(Length starterHeight, Limits limits, List<Reading> readings) {

  /**
   * The least and the most the first course may hang over the eave, both allowed. <em>Common practice, no source</em>: 1/4
   * to 1 in; a published range for strip shingles is 1/4 to 3/8 in past the drip edge (NAVEDTRA-14044).
   *
   * @param least 0 or more
   * @param most at least the least
   */
  public record Limits(Length least, Length most) {

    public Limits {
      if (least.units() < 0 || most.compareTo(least) < 0) {
        throw new IllegalArgumentException(String.format(
            "overhang limits must run from 0 or more upward, but run from %s to %s", least, most));
      }
    }

    /** 1/4 to 1 in. */
    public static Limits standard() {
      return new Limits(Length.ofInches(1, 4), Length.ofInches(1));
    }

    /** Whether the overhang is neither short nor long. */
    public boolean allow(Length overhang) {
      return miss(overhang).isZero();
    }

    /** How far the overhang is outside the limits; no length inside. */
    Length miss(Length overhang) {
      Length under = least.minus(overhang);
      Length over = overhang.minus(most);
      return under.isPositive() ? under : over.isPositive() ? over : Length.ZERO;
    }

    Length middle() {
      return new Length((least.units() + most.units()) / 2);
    }
  }

  /**
   * One measured station.
   *
   * @param station what the crew calls it
   * @param down from the snapped starter line down to the eave edge
   */
  public record Reading(String station, Length down) {}

  public EaveWander {
    readings = List.copyOf(readings);
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("an eave must be measured somewhere, but has no station");
    }
  }

  /** How far the starter, and the first course flush with it, hangs over at a station. */
  public Length overhang(Reading reading) {
    return starterHeight.minus(reading.down());
  }

  /** Whether the overhang is within its limits at every station. */
  public boolean isWithin() {
    return readings.stream().map(this::overhang).allMatch(limits::allow);
  }

  /** The station furthest outside the limits or, where all are inside, nearest to one. */
  public Reading worst() {
    Comparator<Reading> byMiss = Comparator.comparing(at -> limits.miss(overhang(at)));
    Comparator<Reading> byMiddle =
        Comparator.comparing(at -> overhang(at).minus(limits.middle()).abs());
    return readings.stream().max(byMiss.thenComparing(byMiddle)).orElseThrow();
  }

  /** How far the overhang varies between stations. */
  public Length spread() {
    return most().minus(least());
  }

  /** Whether some straight line, parallel to this one, would keep every station inside. */
  public boolean canBeMoved() {
    return spread().compareTo(limits.most().minus(limits.least())) <= 0;
  }

  /** How far to move the line up the slope (down where negative) so that the stations lie evenly about the middle. */
  public Length move() {
    Length centre = new Length((most().units() + least().units()) / 2);
    return centre.minus(limits.middle());
  }

  /** One sentence for the crew; dimensions to the given marks. */
  public String show(Graduation tape) {
    Reading worst = worst();
    String overhang = overhang(worst).showOnTape(tape);
    return isWithin()
        ? "overhang is within its limits at every station, nearest to one at " + worst.station()
            + ": " + overhang
        : String.format(
            "overhang at %s is %s, but must be %s to %s; %s",
            worst.station(),
            overhang,
            limits.least().showOnTape(tape),
            limits.most().showOnTape(tape),
            cure(tape));
  }

  private String cure(Graduation tape) {
    return canBeMoved()
        ? "move the line " + move().abs().showOnTape(tape) + (move().isPositive() ? " up" : " down")
        : "no straight line keeps every station inside: straighten the edge metal first";
  }

  private Length most() {
    return readings.stream().map(this::overhang).max(Comparator.naturalOrder()).orElseThrow();
  }

  private Length least() {
    return readings.stream().map(this::overhang).min(Comparator.naturalOrder()).orElseThrow();
  }
}
