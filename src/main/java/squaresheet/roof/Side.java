package squaresheet.roof;

import java.util.Optional;
import squaresheet.geometry.Point;
import squaresheet.units.DerivedLength;
import squaresheet.units.Length;

/**
 * A side of a plane.
 *
 * @param plane the plane's name
 * @param name the side's name, such as {@code right} or {@code side 3}
 * @param kind what it is
 * @param from its first corner in slope coordinates, counter-clockwise
 * @param to its second corner
 * @param drawn its length by the shape of the plane, not rounded
 * @param taped its length as read off a tape, where somebody did
 */
public record Side(
    String plane,
    String name,
    EdgeKind kind,
    Point from,
    Point to,
    DerivedLength drawn,
    Optional<Length> taped) {

  /** Its length by the tape, or by the shape where it was not measured. */
  public DerivedLength length() {
    return taped.map(Length::toDerived).orElse(drawn);
  }

  /** How far it reaches along the eave. */
  public Length along() {
    return to.x().minus(from.x()).abs();
  }

  /** How far it reaches up the slope. */
  public Length up() {
    return to.y().minus(from.y()).abs();
  }

  /** For people: {@code plane A, right}. */
  public String show() {
    return "plane " + plane + ", " + name;
  }
}
