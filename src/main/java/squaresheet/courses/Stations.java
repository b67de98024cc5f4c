package squaresheet.courses;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import squaresheet.geometry.Point;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Plane;
import squaresheet.roof.Side;
import squaresheet.units.Length;

/**
 * The two places where marks are pulled on every plane: at both ends of the eave, square up from it. They differ where the
 * edge at the top, or the eave, is not level, or where the tape says so of rakes square to the eave; where the top is level
 * courses run true however the sides lean.
 */
final class Stations {

  private Stations() {}

  static List<Lines.Station> of(Plane plane) {
    Optional<Side> eave =
        plane.sides(EdgeKind.EAVE).stream().min(Comparator.comparing(side -> lower(side)));
    Optional<Side> top = plane.sides().stream()
        .filter(side -> isTop(side.kind()))
        .max(Comparator.comparing(side -> upper(side)));
    return List.of(station(plane, eave, top, true), station(plane, eave, top, false));
  }

  private static Lines.Station station(
      Plane plane, Optional<Side> eave, Optional<Side> top, boolean left) {
    Length from =
        eave.map(side -> end(side, left).y()).orElseGet(() -> plane.outline().bottom());
    Length to =
        top.map(side -> end(side, left).y()).orElseGet(() -> plane.outline().top());
    Length up = eave.flatMap(side -> taped(plane, end(side, left))).orElse(to.minus(from));
    Length whole = plane.outline().top().minus(plane.outline().bottom());
    return new Lines.Station(name(plane, eave, left), up.isPositive() ? up : whole);
  }

  /** What the tape says of a rake that stands square on the end of the eave. */
  private static Optional<Length> taped(Plane plane, Point corner) {
    return plane.sides(EdgeKind.RAKE).stream()
        .filter(rake -> rake.from().equals(corner) || rake.to().equals(corner))
        .filter(rake -> rake.along().isZero() && lower(rake).equals(corner.y()))
        .findFirst()
        .flatMap(Side::taped);
  }

  private static String name(Plane plane, Optional<Side> eave, boolean left) {
    Optional<Point> corner = eave.map(side -> end(side, left));
    boolean atRake = corner.isPresent()
        && plane.sides(EdgeKind.RAKE).stream()
            .anyMatch(rake -> rake.from().equals(corner.get()) || rake.to().equals(corner.get()));
    return (left ? "left " : "right ") + (atRake ? "rake" : "end of the eave");
  }

  /** Edges that are level on a true roof, so that a slope in them is a difference to spread. */
  private static boolean isTop(EdgeKind kind) {
    return kind == EdgeKind.RIDGE || kind == EdgeKind.HEADWALL || kind == EdgeKind.PITCH_BREAK;
  }

  private static Length lower(Side side) {
    return side.from().y().compareTo(side.to().y()) < 0
        ? side.from().y()
        : side.to().y();
  }

  private static Length upper(Side side) {
    return side.from().y().compareTo(side.to().y()) > 0
        ? side.from().y()
        : side.to().y();
  }

  private static Point end(Side side, boolean left) {
    return side.from().x().compareTo(side.to().x()) < 0 == left ? side.from() : side.to();
  }
}
