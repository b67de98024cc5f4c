package squaresheet.courses;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import squaresheet.units.DerivedLength;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/**
 * The lines to snap. The starter line and the first-course line are measured up from the eave edge; the marks are pulled
 * from the first-course line. Where stations differ in length the difference is spread over all lines alike, the longest
 * station keeping the full interval, so that the last course runs true to the top.
 *
 * @param starterLine the upper edge of the starter, up from the eave edge
 * @param firstCourse the upper edge of the first course, up from the eave edge
 * @param interval how far apart the lines stand at the longest station
 * @param marks the marks at every station, in the order the stations were given
 */
public record Lines(Length starterLine, Length firstCourse, Interval interval, List<Marks> marks) {

  public Lines {
    marks = List.copyOf(marks);
  }

  /**
   * A place along the eave where the distance up the slope was measured: a rake, or anywhere between.
   *
   * @param name what the crew calls it, such as {@code left rake}
   * @param up the distance up the slope from the eave edge to the top of the courses; more than 0
   */
  public record Station(String name, Length up) {

    public Station {
      if (name.isBlank()) {
        throw new IllegalArgumentException("a station must have a name, but it is empty");
      }
      if (!up.isPositive()) {
        throw new IllegalArgumentException(
            "the distance up the slope at " + name + " must be more than 0, but is " + up);
      }
    }
  }

  /**
   * The marks to pull at one station, measured up the slope from the upper edge of the first course.
   *
   * @param station where
   * @param at the marks, rising
   */
  public record Marks(Station station, List<Length> at) {

    public Marks {
      at = List.copyOf(at);
    }

    /** For people: the marks in inches or millimetres, as they are read from a tape hooked on the line. */
    public String show(Graduation graduation) {
      return at.stream().map(mark -> mark.showOnTape(graduation)).collect(Collectors.joining(", "));
    }
  }

  /**
   * The lines for a product's height and a starter's height at an eave overhang.
   *
   * @param height the height of a shingle
   * @param starterHeight the height of the starter as laid
   * @param overhang how far the first course hangs over the eave
   * @param interval how far apart the lines stand
   * @param tape every mark is rounded down to this
   * @param stations at least one
   */
  public static Lines of(
      Length height,
      Length starterHeight,
      Length overhang,
      Interval interval,
      Graduation tape,
      List<Station> stations) {
    Length first = height.minus(overhang);
    Length longest = longest(stations).up().minus(first);
    List<Marks> marks = stations.stream()
        .map(station -> marks(station, station.up().minus(first), longest, interval, tape))
        .toList();
    return new Lines(starterHeight.minus(overhang), first, interval, marks);
  }

  private static Station longest(List<Station> stations) {
    return stations.stream()
        .max(Comparator.comparing(Station::up))
        .orElseThrow(() ->
            new IllegalArgumentException("marks need a station to be pulled at, but have none"));
  }

  private static Marks marks(
      Station station, Length reach, Length longest, Interval interval, Graduation tape) {
    int count = reach.isPositive() ? interval.linesBelow(longest) : 0;
    return new Marks(
        station,
        Rungs.of(
            count,
            number -> share(interval.laid().times(number), reach, longest),
            interval.full(),
            tape));
  }

  private static Length share(Length full, Length reach, Length longest) {
    return new Length(Whole.down(full.units(), reach.units(), longest.units()));
  }

  /** How much closer together the lines run at the shortest station than at the longest, for each line. */
  public DerivedLength taperPerLine() {
    Length most = reach(Comparator.naturalOrder());
    Length least = reach(Comparator.reverseOrder());
    double share = most.isPositive() ? most.minus(least).units() / (double) most.units() : 0;
    return interval.laid().toDerived().times(share);
  }

  private Length reach(Comparator<Length> order) {
    return marks.stream().map(at -> at.station().up()).max(order).orElseThrow().minus(firstCourse);
  }
}
