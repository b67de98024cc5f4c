package squaresheet.takeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.formula.Value;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Opening;
import squaresheet.roof.Plane;
import squaresheet.roof.Roof;
import squaresheet.roof.SharedEdge;
import squaresheet.roof.Side;

/** Turns a roof into named values: measures only, no quantity of material. */
final class RoofNames {

  private RoofNames() {}

  static List<Map<String, Value>> planes(Roof roof) {
    return roof.planes().stream().map(RoofNames::plane).toList();
  }

  private static Map<String, Value> plane(Plane plane) {
    Map<String, Value> row = new LinkedHashMap<>();
    row.put("plane_name", new Value.Text(plane.id()));
    row.put("plane_shape", new Value.Text(plane.shape().word()));
    row.put("pitch_rise", Value.of(plane.pitch().rise().doubleValue()));
    row.put("eave_width", along(plane, "bottom"));
    row.put("top_width", along(plane, "top"));
    row.put("slope_height", Value.of(plane.height().toFeet()));
    row.put("outline_area", Value.of(plane.grossArea().squareFeet()));
    row.put("opening_area", Value.of(plane.openingArea().squareFeet()));
    return row;
  }

  private static Value along(Plane plane, String side) {
    return Value.of(plane.side(side).map(found -> found.along().toFeet()).orElse(0.0));
  }

  static List<Map<String, Value>> edges(Roof roof) {
    List<Map<String, Value>> rows = new ArrayList<>();
    for (Plane plane : roof.planes()) {
      plane.sides().stream()
          .filter(side -> roof.sharedBy(side).isEmpty())
          .forEach(side -> rows.add(edge(side, side.kind(), side.length().toFeet())));
      roof.sharedEdges().stream()
          .filter(shared -> shared.one().plane().equals(plane.id()))
          .forEach(shared -> rows.add(shared(shared)));
      plane.openings().forEach(opening -> rows.addAll(around(plane, opening)));
    }
    return rows;
  }

  private static Map<String, Value> shared(SharedEdge shared) {
    return edge(shared.one(), shared.kind(), shared.length().toFeet());
  }

  private static Map<String, Value> edge(Side side, EdgeKind kind, double feet) {
    return row(side.plane() + " " + side.name(), side.plane(), kind.word(), feet, "none");
  }

  /** An opening's lower edge is its front, its upper edge its back; each side reaches as far up as the opening. */
  private static List<Map<String, Value>> around(Plane plane, Opening opening) {
    double across = opening.width().toFeet();
    double up = opening.height().toFeet();
    List<Map<String, Value>> rows = new ArrayList<>();
    rows.add(part(plane, opening, "front", "opening front", across));
    rows.add(part(plane, opening, "back", "opening back", across));
    rows.add(part(plane, opening, "left", "opening side", up));
    rows.add(part(plane, opening, "right", "opening side", up));
    return rows;
  }

  private static Map<String, Value> part(
      Plane plane, Opening opening, String part, String kind, double feet) {
    return row(opening.id() + " " + part, plane.id(), kind, feet, opening.kind().word());
  }

  private static Map<String, Value> row(
      String name, String plane, String kind, double feet, String opening) {
    Map<String, Value> row = new HashMap<>();
    row.put("edge_name", new Value.Text(name));
    row.put("edge_plane", new Value.Text(plane));
    row.put("edge_kind", new Value.Text(kind));
    row.put("edge_length", Value.of(feet));
    row.put("edge_opening", new Value.Text(opening));
    return row;
  }
}
