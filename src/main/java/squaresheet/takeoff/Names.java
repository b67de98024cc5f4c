package squaresheet.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.formula.Value;
import squaresheet.product.Role;
import squaresheet.product.Selection;
import squaresheet.roof.Roof;
import squaresheet.takeoff.Rule.Per;
import squaresheet.units.Ratio;

/**
 * What goes into a takeoff by name: from the roof, from the products, from the course layout, and what the estimator typed.
 *
 * @param job one value each
 * @param planes one row of values for each plane
 * @param edges one row of values for each straight edge, shared edges once
 * @param corners one row of values for each corner of the planes of free shape
 */
public record Names(
    Map<String, Value> job,
    List<Map<String, Value>> planes,
    List<Map<String, Value>> edges,
    List<Map<String, Value>> corners) {

  public Names {
    job = Map.copyOf(job);
    planes = planes.stream().map(Map::copyOf).toList();
    edges = edges.stream().map(Map::copyOf).toList();
    corners = corners.stream().map(Map::copyOf).toList();
  }

  /** Nothing but what is added. */
  public static Names none() {
    return new Names(Map.of(), List.of(), List.of(), List.of());
  }

  /** What a roof gives: its planes, its straight edges, and the corners of its planes of free shape. */
  public static Names of(Roof roof) {
    return new Names(Map.of(), RoofNames.planes(roof), RoofNames.edges(roof), CornerNames.of(roof));
  }

  /** These and the stated measures of the products, each under the name of its role. */
  public Names with(Selection selection) {
    Map<String, Value> more = new LinkedHashMap<>();
    selection.products().forEach((role, product) -> product
        .facts()
        .forEach(fact -> more.put(role + "_" + fact.name(), Value.of(fact.value()))));
    Optional<String> eave = selection.of(Role.EAVE_METAL).map(product -> product.id());
    Optional<String> rake = selection.of(Role.RAKE_METAL).map(product -> product.id());
    more.put("rake_metal_shared", Value.of(eave.isPresent() && eave.equals(rake) ? 1 : 0));
    return with(more);
  }

  /** These and the waste found by laying out every course. */
  public Names withSimulatedWaste(Ratio waste) {
    return with("simulated_waste", waste.toDouble());
  }

  /** These and a number for the job: a setting, or a value that is given. */
  public Names with(String name, double number) {
    return with(Map.of(name, Value.of(number)));
  }

  /** These and a text for the job. */
  public Names with(String name, String text) {
    return with(Map.of(name, new Value.Text(text)));
  }

  /** These and more values for the job; what was there under one of these names gives way. */
  public Names with(Map<String, Value> more) {
    Map<String, Value> all = new LinkedHashMap<>(job);
    all.putAll(more);
    return new Names(all, planes, edges, corners);
  }

  /** These and one more plane. */
  public Names withPlane(Map<String, Value> plane) {
    return new Names(job, joined(planes, plane), edges, corners);
  }

  /** These and one more edge. */
  public Names withEdge(Map<String, Value> edge) {
    return new Names(job, planes, joined(edges, edge), corners);
  }

  private static List<Map<String, Value>> joined(
      List<Map<String, Value>> rows, Map<String, Value> row) {
    List<Map<String, Value>> all = new ArrayList<>(rows);
    all.add(row);
    return all;
  }

  List<Map<String, Value>> rows(Per per) {
    return switch (per) {
      case JOB -> List.of(job);
      case PLANE -> planes;
      case EDGE -> edges;
      case CORNER -> corners;
    };
  }
}
