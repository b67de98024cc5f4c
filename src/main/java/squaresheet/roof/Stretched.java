package squaresheet.roof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.geometry.Outline;
import squaresheet.geometry.Point;
import squaresheet.units.Area;
import squaresheet.units.DerivedLength;
import squaresheet.units.Length;

/**
 * A shape with its lengths across the slope multiplied and not rounded. Areas and lengths follow from it, as they do in a
 * spreadsheet; the outline that courses are laid on stands on whole 1/320 mm instead.
 *
 * @param shape with its lengths as measured
 * @param across what lengths across the slope are multiplied by: 1, or the pitch factor where they were taken in plan
 */
record Stretched(Shape shape, double across) {

  /** The area inside the corners. Range: above 0. */
  Area.Sloped area() {
    return new Area.Sloped(Outline.of(shape.corners(1)).squareFeet() * across);
  }

  /** How far it reaches up the slope. */
  DerivedLength height() {
    Outline measured = Outline.of(shape.corners(1));
    return measured.top().minus(measured.bottom()).toDerived().times(across);
  }

  /** The lengths of the sides, in the order of the corners as written. */
  List<DerivedLength> sides() {
    List<Point> corners = twice(shape).corners(1);
    List<DerivedLength> sides = new ArrayList<>();
    for (int index = 0; index < corners.size(); index++) {
      Point from = corners.get(index);
      Point to = corners.get((index + 1) % corners.size());
      double along = to.x().minus(from.x()).toInches() / 2;
      double up = to.y().minus(from.y()).toInches() / 2 * across;
      sides.add(new DerivedLength(Math.hypot(along, up)));
    }
    return sides;
  }

  /** The shape twice as large: a top that stands in the middle then stands on a whole 1/320 mm. */
  private static Shape twice(Shape shape) {
    if (shape instanceof Shape.Polygon polygon) {
      return new Shape.Polygon(polygon.corners().stream()
          .map(corner -> corner.plus(corner.x(), corner.y()))
          .toList());
    }
    Map<String, Length> lengths = new LinkedHashMap<>();
    shape.lengths().forEach((name, length) -> lengths.put(name, length.plus(length)));
    return ShapeReader.shape(shape, lengths);
  }
}
