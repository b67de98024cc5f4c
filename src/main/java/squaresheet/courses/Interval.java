package squaresheet.courses;

import squaresheet.units.DerivedLength;
import squaresheet.units.Direction;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/**
 * The distance between two snapped lines. People round it to a number that is easy on a tape; it may only be rounded down,
 * because rounding up stretches every course between the lines past the product's exposure.
 *
 * @param courses how many courses lie between two lines, 1 or more
 * @param exposure the product's exposure, the most that may show; more than 0
 * @param laid the distance snapped; more than 0, at most {@code courses} times the exposure
 */
public record Interval(int courses, Length exposure, Length laid) {

  public Interval {
    if (courses < 1) {
      throw new IllegalArgumentException(
          "a line is snapped every 1 or more courses, but reads every " + courses);
    }
    if (!exposure.isPositive()) {
      throw new IllegalArgumentException("exposure must be more than 0, but is " + exposure);
    }
    if (!laid.isPositive()) {
      throw new IllegalArgumentException(
          "the distance between lines must be more than 0, but is " + laid);
    }
    refuseStretch(courses, exposure, laid);
  }

  private static void refuseStretch(int courses, Length exposure, Length laid) {
    Length most = exposure.times(courses);
    if (laid.compareTo(most) > 0) {
      throw new IllegalArgumentException(String.format(
          "lines every %d courses may stand at most %s apart, but %s apart stretches the exposure to %s, past the"
              + " product's %s",
          courses, most, laid, shown(laid, courses), exposure));
    }
  }

  private static String shown(Length laid, int courses) {
    return String.format(java.util.Locale.ROOT, "%.3f in", laid.toInches() / courses);
  }

  /** Lines every {@code courses} courses at the product's own exposure, not rounded. */
  public static Interval exact(int courses, Length exposure) {
    return new Interval(courses, exposure, exposure.times(courses));
  }

  /**
   * Lines every {@code courses} courses, the distance rounded down to a mark of the tape; where that leaves nothing, not
   * rounded.
   */
  public static Interval of(int courses, Length exposure, Graduation mark) {
    Length whole = exposure.times(courses);
    Length rounded = whole.roundedTo(mark, Direction.DOWN);
    return new Interval(courses, exposure, rounded.isPositive() ? rounded : whole);
  }

  /** The distance at the product's own exposure. */
  public Length full() {
    return exposure.times(courses);
  }

  /** The exposure that results, which need not be on any tape: 28 in over five courses is 5.6 in. */
  public DerivedLength exposureLaid() {
    return new DerivedLength(laid.toInches() / courses);
  }

  /** What rounding gives away between two lines. */
  public Length lostPerLine() {
    return full().minus(laid);
  }

  /** Whether courses are laid at the product's own exposure. */
  public boolean isFull() {
    return lostPerLine().isZero();
  }

  /** The least number of courses that reaches {@code height} up the slope; 0 if there is nothing to cover. */
  public int coursesTo(Length height) {
    return height.isPositive() ? Whole.up(height.units(), courses, laid.units()) : 0;
  }

  /** How many lines stand above the first course's and below {@code height} over it. */
  int linesBelow(Length height) {
    return height.isPositive() ? Whole.up(height.units(), 1, laid.units()) - 1 : 0;
  }
}
