package squaresheet.takeoff;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import squaresheet.finding.Read;
import squaresheet.formula.Value;
import squaresheet.product.Catalogue;
import squaresheet.product.Product;
import squaresheet.product.Role;
import squaresheet.product.Selection;

/** Small jobs for tests, and the demo products. */
final class Jobs {

  static final Selection PRODUCTS = Selection.firstOfEach(
      Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow());

  private Jobs() {}

  /** A rectangle with its eave, two rakes and a ridge of its own. */
  static Names plane(Names names, String id, double rise, double eave, double height) {
    Names edged = edge(bare(names, id, rise, eave, height), id, "eave", eave);
    edged = edge(edge(edged, id, "rake", height), id, "rake", height);
    return edge(edged, id, "ridge", eave);
  }

  static Names bare(Names names, String id, double rise, double eave, double height) {
    return names.withPlane(Map.of(
        "plane_name", new Value.Text(id),
        "plane_shape", new Value.Text("rectangle"),
        "pitch_rise", Value.of(rise),
        "eave_width", Value.of(eave),
        "top_width", Value.of(eave),
        "slope_height", Value.of(height),
        "outline_area", Value.of(eave * height),
        "opening_area", Value.of(0)));
  }

  static Names edge(Names names, String plane, String kind, double feet) {
    return edge(names, plane, kind, feet, "none");
  }

  static Names edge(Names names, String plane, String kind, double feet, String opening) {
    return names.withEdge(Map.of(
        "edge_name", new Value.Text(plane + " " + kind),
        "edge_plane", new Value.Text(plane),
        "edge_kind", new Value.Text(kind),
        "edge_length", Value.of(feet),
        "edge_opening", new Value.Text(opening)));
  }

  static Takeoff of(Names names) {
    return of(Rulebook.standard(), names);
  }

  static Takeoff of(Rulebook rulebook, Names names) {
    return Takeoff.of(rulebook, names, PRODUCTS).value().orElseThrow();
  }

  static double number(Names names, String rule) {
    Takeoff takeoff = of(names);
    return takeoff
        .number(rule, 0)
        .orElseThrow(() -> new AssertionError(takeoff.worked(rule).show()));
  }

  /** The standard rulebook with some rules overridden, a line each: name,formula. */
  static Read<Rulebook> company(String lines) {
    return Rulebook.standard().overriddenBy("name,formula\n" + lines, "company.csv");
  }

  /** What a standard rule comes to over a roof without planes, where other names come to the given numbers. */
  static double given(String rule, Map<String, Double> numbers) {
    Names names = Names.none();
    StringBuilder lines = new StringBuilder();
    for (Map.Entry<String, Double> number : numbers.entrySet()) {
      if (Rulebook.standard().rule(number.getKey()).orElseThrow().isWorkedOut()) {
        lines.append(number.getKey()).append(',').append(number.getValue()).append('\n');
      } else {
        names = names.with(number.getKey(), number.getValue());
      }
    }
    Rulebook book = lines.isEmpty()
        ? Rulebook.standard()
        : company(lines.toString()).value().orElseThrow();
    return Takeoff.of(book, names, without(numbers))
        .value()
        .orElseThrow()
        .number(rule)
        .orElseThrow();
  }

  /** Numbers given for a product's measures stand in for the product. */
  private static Selection without(Map<String, Double> numbers) {
    Map<Role, Product> left = new EnumMap<>(PRODUCTS.products());
    left.entrySet().removeIf(part -> part.getValue().facts().stream()
        .anyMatch(fact -> numbers.containsKey(part.getKey() + "_" + fact.name())));
    return new Selection(left);
  }
}
