package squaresheet.courses;

import java.util.List;
import squaresheet.units.DerivedLength;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/**
 * How the courses come out at the top: how many there are, what is left for the last, what rounding cost, and the even
 * exposure that would make the last a full one.
 *
 * @param covered the height to cover up the slope, from the lower edge of the first course; more than 0
 * @param interval how the lines are spaced
 */
public record Reach(Length covered, Interval interval) {

  public Reach {
    if (!covered.isPositive()) {
      throw new IllegalArgumentException(
          "the height to cover must be more than 0, but is " + covered);
    }
  }

  /** How many courses are laid. */
  public int courses() {
    return interval.coursesTo(covered);
  }

  /** How many courses the product's own exposure would need. */
  public int fewest() {
    return Interval.exact(1, interval.exposure()).coursesTo(covered);
  }

  /** The courses that rounding the interval down costs, 0 or more. */
  public int extra() {
    return courses() - fewest();
  }

  /** The exposure given away up the whole slope by rounding the interval down. */
  public DerivedLength lost() {
    return interval.lostPerLine().toDerived().times(courses() / (double) interval.courses());
  }

  /** What is left to show of the last course, more than 0, at most the exposure laid. */
  public DerivedLength lastCourse() {
    double below = interval.laid().toInches() * (courses() - 1) / interval.courses();
    return new DerivedLength(covered.toInches() - below);
  }

  /** The exposure at which the same height ends on a full last course, with no more courses than the product allows. */
  public DerivedLength evenExposure() {
    return new DerivedLength(covered.toInches() / fewest());
  }

  /**
   * Marks for the even exposure, pulled from the upper edge of the first course, every so many courses as the interval
   * says. Each is rounded down, and none stands further from the one below than the product allows.
   */
  public List<Length> evenMarks(Graduation tape) {
    return Rungs.of(
        (fewest() - 1) / interval.courses(),
        number ->
            new Length(Whole.down(covered.units(), (long) number * interval.courses(), fewest())),
        interval.full(),
        tape);
  }
}
