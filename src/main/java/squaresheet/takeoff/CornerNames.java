package squaresheet.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.formula.Value;
import squaresheet.geometry.Outline;
import squaresheet.geometry.Point;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Plane;
import squaresheet.roof.Roof;
import squaresheet.roof.Shape;

/**
 * Turns the corners of planes of free shape into named values: each with the side to the next, so that the width of the
 * plane at any height is the signed sum over the sides crossed there.
 */
final class CornerNames {

  private final Plane plane;
  private final List<Point> corners;
  private final double turn;
  private final List<SideOfShape> sides = new ArrayList<>();

  private CornerNames(Plane plane, List<Point> corners) {
    this.plane = plane;
    this.corners = corners;
    turn = Outline.isClockwise(corners) ? -1 : 1;
    for (int index = 0; index < corners.size(); index++) {
      sides.add(side(index));
    }
  }

  static List<Map<String, Value>> of(Roof roof) {
    List<Map<String, Value>> rows = new ArrayList<>();
    for (Plane plane : roof.planes()) {
      if (plane.shape() instanceof Shape.Polygon polygon) {
        rows.addAll(new CornerNames(plane, polygon.corners()).rows());
      }
    }
    return rows;
  }

  /**
   * A side, in feet above the lowest corner of its plane and along the eave.
   *
   * @param above its first corner
   * @param low its lower end
   * @param high its upper end
   * @param start where its line meets the lowest level; with a minus where the plane lies to the right of it
   * @param slant along for each foot up, with a minus in the same way
   * @param floor its length where it is level and the plane lies above it, else 0
   */
  private record SideOfShape(
      double above, double low, double high, double start, double slant, double floor) {

    /** What it adds to the width of the plane just below a height; level sides from there up count in full. */
    double justBelow(double height) {
      double crossed = low < height && high >= height ? start + slant * height : 0;
      return crossed + (low >= height ? floor : 0);
    }
  }

  private SideOfShape side(int index) {
    Point from = corners.get(index);
    Point to = corners.get((index + 1) % corners.size());
    double above = above(from);
    double next = above(to);
    double along = to.x().minus(from.x()).toFeet();
    if (from.y().equals(to.y())) {
      return new SideOfShape(above, above, above, 0, 0, Math.max(0, turn * along));
    }
    double sign = turn * Math.signum(next - above);
    double slant = sign * along / (next - above);
    double start = sign * from.x().toFeet() - slant * above;
    return new SideOfShape(above, Math.min(above, next), Math.max(above, next), start, slant, 0);
  }

  private double above(Point corner) {
    return corner.y().minus(Outline.of(corners).bottom()).toFeet() * plane.across();
  }

  private List<Map<String, Value>> rows() {
    List<Map<String, Value>> rows = new ArrayList<>();
    for (int index = 0; index < sides.size(); index++) {
      SideOfShape side = sides.get(index);
      Map<String, Value> row = new LinkedHashMap<>();
      row.put("corner_plane", new Value.Text(plane.id()));
      row.put("corner_above", Value.of(side.above));
      row.put("corner_low", Value.of(side.low));
      row.put("corner_high", Value.of(side.high));
      row.put("corner_start", Value.of(side.start));
      row.put("corner_slant", Value.of(side.slant));
      row.put("corner_floor", Value.of(side.floor));
      row.put("corner_eave", Value.of(eave(index)));
      row.put("corner_row", Value.of(row(side.above)));
      rows.add(row);
    }
    return rows;
  }

  private double row(double height) {
    return sides.stream().mapToDouble(side -> side.justBelow(height)).sum();
  }

  private double eave(int index) {
    return plane
        .side("side " + (index + 1))
        .filter(side -> side.kind() == EdgeKind.EAVE)
        .map(side -> side.drawn().toFeet())
        .orElse(0.0);
  }
}
