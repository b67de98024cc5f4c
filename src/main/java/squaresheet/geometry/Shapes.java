package squaresheet.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.relateng.RelateNG;
import org.locationtech.jts.operation.relateng.RelatePredicate;
import squaresheet.units.DerivedLength;
import squaresheet.units.Length;

/**
 * Where figures lie to one another, answered by the topology library. Coordinates are whole numbers below 2^29, which a
 * double holds exactly, and its predicates are exact on such.
 */
final class Shapes {

  /** Every coordinate a whole number of units. */
  private static final PrecisionModel UNITS = new PrecisionModel(1);

  private static final GeometryFactory FACTORY = new GeometryFactory(UNITS);

  private Shapes() {}

  static boolean covers(Outline outline, Point point) {
    return RelateNG.relate(
        polygon(outline), FACTORY.createPoint(coordinate(point)), RelatePredicate.covers());
  }

  static boolean covers(Outline outline, Outline other) {
    return RelateNG.relate(polygon(outline), polygon(other), RelatePredicate.covers());
  }

  static boolean overlap(Outline one, Outline other) {
    return RelateNG.relate(polygon(one), polygon(other), "T********");
  }

  static DerivedLength distance(Outline outline, Point point) {
    double units = polygon(outline).distance(FACTORY.createPoint(coordinate(point)));
    return new DerivedLength(units / Length.ofInches(1).units());
  }

  static List<Outline> clip(Outline outline, Outline other) {
    Geometry common =
        OverlayNG.overlay(polygon(outline), polygon(other), OverlayNG.INTERSECTION, UNITS);
    List<Outline> parts = new ArrayList<>();
    for (int part = 0; part < common.getNumGeometries(); part++) {
      if (common.getGeometryN(part) instanceof Polygon polygon && !polygon.isEmpty()) {
        parts.add(outline(polygon));
      }
    }
    return parts;
  }

  private static Outline outline(Polygon polygon) {
    Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
    return Outline.of(Arrays.stream(ring, 0, ring.length - 1)
        .map(at -> Point.ofUnits(Math.round(at.x), Math.round(at.y)))
        .toList());
  }

  static Polygon polygon(Outline outline) {
    Point first = outline.corner(0);
    return FACTORY.createPolygon(Stream.concat(outline.corners().stream(), Stream.of(first))
        .map(Shapes::coordinate)
        .toArray(Coordinate[]::new));
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate((double) point.x().units(), (double) point.y().units());
  }
}
