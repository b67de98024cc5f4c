package squaresheet.roof;

import java.util.List;
import java.util.Optional;
import squaresheet.geometry.Outline;
import squaresheet.geometry.Region;
import squaresheet.units.Area;
import squaresheet.units.DerivedLength;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/**
 * A roof plane, resolved: a sound outline in slope coordinates (x along the eave, y up the slope, true lengths), and its
 * openings inside it.
 *
 * @param id its name
 * @param shape the shape as written
 * @param measured how its lengths across the slope were taken
 * @param pitch the pitch
 * @param outline its corners, counter-clockwise
 * @param sides its sides, side i from corner i to the next
 * @param openings what is cut out
 * @param grossArea the area on the slope, openings not out; from the lengths as measured, where the outline rounds them
 * @param height how far it reaches up the slope, in the same way
 */
public record Plane(
    String id,
    Shape shape,
    PlaneNotes.Measured measured,
    Pitch pitch,
    Outline outline,
    List<Side> sides,
    List<Opening> openings,
    Area.Sloped grossArea,
    DerivedLength height) {

  public Plane {
    sides = List.copyOf(sides);
    openings = List.copyOf(openings);
  }

  /** What its lengths across the slope were multiplied by: 1, or the pitch factor where they were taken in plan. */
  public double across() {
    return measured.factor(pitch);
  }

  /** The area on the slope, openings out. */
  public Area.Sloped slopedArea() {
    return grossArea().minus(openingArea());
  }

  /** The area of the openings on the slope. */
  public Area.Sloped openingArea() {
    return openings.stream().map(Opening::slopedArea).reduce(Area.Sloped.ZERO, Area.Sloped::plus);
  }

  /** The area seen from above, openings out. */
  public Area.Plan planArea() {
    return pitch.plan(slopedArea());
  }

  /** The area seen from above, openings not out. */
  public Area.Plan grossPlanArea() {
    return pitch.plan(grossArea());
  }

  /** The outline with the openings whose position is known cut out; the others only count in the area. */
  public Region region() {
    return Region.of(
        outline,
        openings.stream().filter(Opening::isPlaced).map(Opening::outline).toList());
  }

  /** The openings of which only the size is known. */
  public List<Opening> unplacedOpenings() {
    return openings.stream().filter(opening -> !opening.isPlaced()).toList();
  }

  /** The side of this name. */
  public Optional<Side> side(String name) {
    return sides.stream().filter(side -> side.name().equals(name)).findFirst();
  }

  /** The sides of this kind. */
  public List<Side> sides(EdgeKind kind) {
    return sides.stream().filter(side -> side.kind() == kind).toList();
  }

  /** The length of the sides of this kind, each in full even where another plane shares it. */
  public DerivedLength length(EdgeKind kind) {
    return sides(kind).stream().map(Side::length).reduce(DerivedLength.ZERO, DerivedLength::plus);
  }

  /** Between which areas the sloped area lies if every reading is off by at most the tolerance. */
  public Bounds slopedArea(Length tolerance) {
    return AreaBounds.of(this, tolerance);
  }

  /**
   * Two areas between which a third lies.
   *
   * @param low the least it can be
   * @param high the most it can be
   */
  public record Bounds(Area.Sloped low, Area.Sloped high) {

    /** The bounds of the sum of two areas. */
    public Bounds plus(Bounds other) {
      return new Bounds(low.plus(other.low), high.plus(other.high));
    }

    /** Whether the area lies within, ends included. */
    public boolean contains(Area.Sloped area) {
      return low.compareTo(area) <= 0 && area.compareTo(high) <= 0;
    }
  }

  /** Which band of slopes its pitch lies in. */
  public SlopeBand slopeBand() {
    return SlopeBand.of(pitch);
  }
}
