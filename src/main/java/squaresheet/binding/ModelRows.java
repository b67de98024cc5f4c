package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import squaresheet.geometry.Point;
import squaresheet.job.JobResult;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Opening;
import squaresheet.roof.Plane;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Shape;
import squaresheet.roof.Side;
import squaresheet.units.Length;

/** The planes, edges and openings of a job, as rows of tables may hold them. */
final class ModelRows {

  private final JobResult job;

  ModelRows(JobResult job) {
    this.job = job;
  }

  List<ModelRow> planes() {
    return job.roof().planes().stream().map(this::plane).toList();
  }

  private ModelRow plane(Plane plane) {
    Map<String, Known> values = new LinkedHashMap<>();
    values.put("plane", new Known.Word(plane.id()));
    values.put("shape", shapeWord(plane.shape()));
    values.put("pitch", new Known.Steep(plane.pitch()));
    boolean slope = plane.measured() == PlaneNotes.Measured.ON_SLOPE;
    values.put("measured", new Known.Word(slope ? "slope" : "plan", text -> Tokens.of(text).stream()
        .anyMatch(word -> slope ? word.startsWith("slope") : word.matches("plan|level"))));
    lengths(plane, slope, values);
    areas(plane, values);
    sides(plane, values);
    Map<String, Known> ifNew = new LinkedHashMap<>();
    job.takeoff()
        .number("waste_rate")
        .ifPresent(rate -> ifNew.put("waste_rate", new Known.Amount(rate)));
    return ModelRow.named(plane.id(), plane.shape().word(), values).ifNew(ifNew);
  }

  private static Known.Word shapeWord(Shape shape) {
    String start = shape.word().substring(0, 3);
    Predicate<String> same =
        text -> Tokens.plain(text).replaceAll("^[^\\p{L}]+", "").startsWith(start);
    return new Known.Word(shape.word(), same);
  }

  /** Lengths across the slope as they were taken, and turned by the pitch for a column that wants the other way. */
  private static void lengths(Plane plane, boolean slope, Map<String, Known> values) {
    if (plane.shape() instanceof Shape.Polygon polygon) {
      values.put("corners", new Known.Word(corners(polygon), text -> false));
      double factor = plane.pitch().factor();
      values.put("outline", new Known.Outline(plane.outline().corners(), factor));
      return;
    }
    Map<String, Length> lengths = plane.shape().lengths();
    Length height = lengths.getOrDefault("rake", lengths.get("height"));
    double factor = plane.pitch().factor();
    Known taken = new Known.Size(height);
    values.put("eave", new Known.Size(lengths.get("eave")));
    values.put("up_slope", slope ? taken : new Known.Amount(height.toFeet() * factor));
    values.put("run", slope ? new Known.Amount(height.toFeet() / factor) : taken);
    values.put("top", new Known.Size(top(plane.shape(), lengths)));
    Optional.ofNullable(lengths.get("offset"))
        .ifPresent(it -> values.put("offset", new Known.Size(it)));
  }

  private static Length top(Shape shape, Map<String, Length> lengths) {
    return shape instanceof Shape.Triangle
        ? Length.ZERO
        : lengths.getOrDefault("ridge", lengths.get("eave"));
  }

  private static String corners(Shape.Polygon polygon) {
    return polygon.corners().stream()
        .map(ModelRows::corner)
        .reduce((one, other) -> one + "; " + other)
        .orElse("");
  }

  private static String corner(Point point) {
    return point.x() + ", " + point.y();
  }

  private void areas(Plane plane, Map<String, Known> values) {
    double gross = plane.grossArea().squareFeet();
    double net = plane.slopedArea().squareFeet();
    values.put("factor", new Known.Amount(plane.pitch().factor()));
    values.put("plan_area", new Known.Amount(plane.grossPlanArea().squareFeet()));
    values.put("sloped_area", new Known.Amount(gross, List.of(net)));
    values.put("net_area", new Known.Amount(net));
    values.put("opening_area", new Known.Amount(plane.openingArea().squareFeet()));
    values.put("squares", new Known.Amount(net, List.of(gross)));
    job.layout()
        .flatMap(layout -> layout.plan(plane.id()))
        .ifPresent(plan -> values.put("courses", new Known.Amount(plan.courses())));
  }

  private void sides(Plane plane, Map<String, Known> values) {
    Map.of("left", "left_edge", "top", "top_edge", "right", "right_edge")
        .forEach((side, property) -> plane
            .side(side)
            .map(it -> kindWord(it.kind()))
            .ifPresent(it -> values.put(property, it)));
    if (plane.shape() instanceof Shape.Polygon) {
      values.put(
          "edges",
          new Known.Word(
              String.join(
                  ", ", plane.sides().stream().map(it -> it.kind().word()).toList()),
              text -> false));
    }
  }

  private static Known.Word kindWord(EdgeKind kind) {
    return new Known.Word(kind.word(), text -> isOf(kind, text.split("\\s*(?:/|:| with )", 2)[0]));
  }

  private static boolean isOf(EdgeKind kind, String text) {
    return EdgeKind.from(text.strip()).filter(kind::equals).isPresent();
  }

  /**
   * One row for each kind of edge, with its length over the roof.
   *
   * @param counted whether the length is that of one of so many edges
   */
  List<ModelRow> kinds(boolean counted) {
    return job.roof().edgeKinds().stream()
        .filter(kind -> kind != EdgeKind.OPEN)
        .map(kind -> {
          double feet = job.roof().length(kind).toFeet();
          Map<String, Known> values = new LinkedHashMap<>();
          values.put("edge", kindWord(kind));
          int count = job.roof().count(kind);
          values.put("length", new Known.Amount(feet / (counted ? count : 1)));
          values.put("total_length", new Known.Amount(feet));
          values.put("count", new Known.Amount(count));
          return new ModelRow(
              kind.word(),
              "edge",
              text -> isOf(kind, text.replaceFirst("[,(:].*", "").replaceFirst("(?i)^total ", "")),
              values,
              Map.of());
        })
        .toList();
  }

  /** One row for each edge of each plane, as a table says its plane and kind. */
  List<ModelRow> edges() {
    List<ModelRow> rows = new ArrayList<>();
    for (Plane plane : job.roof().planes()) {
      for (Side side : plane.sides()) {
        rows.add(edge(plane, side));
      }
    }
    return rows;
  }

  private static ModelRow edge(Plane plane, Side side) {
    Map<String, Known> values = new LinkedHashMap<>();
    values.put("edge", kindWord(side.kind()));
    values.put("plane", new Known.Word(plane.id()));
    values.put("side", new Known.Word(side.name()));
    values.put("length", new Known.Amount(side.length().toFeet()));
    side.taped().ifPresent(it -> values.put("taped", new Known.Size(it)));
    values.put("geometry_length", new Known.Amount(side.drawn().toFeet()));
    return ModelRow.named(plane.id() + " " + side.name(), "edge", values);
  }

  List<ModelRow> openings() {
    return job.roof().planes().stream()
        .flatMap(plane -> plane.openings().stream().map(it -> opening(plane, it)))
        .toList();
  }

  private static ModelRow opening(Plane plane, Opening opening) {
    Map<String, Known> values = new LinkedHashMap<>();
    values.put("opening", new Known.Word(opening.id()));
    values.put("plane", new Known.Word(plane.id()));
    values.put("what", new Known.Word(opening.kind().word().toLowerCase(Locale.ROOT)));
    values.put("width", new Known.Size(opening.width()));
    values.put("up_slope", new Known.Size(opening.height().nearest()));
    values.put("area", new Known.Amount(opening.slopedArea().squareFeet()));
    if (opening.isPlaced()) {
      values.put("from_left", new Known.Size(opening.outline().left()));
      values.put("from_eave", new Known.Size(opening.outline().bottom()));
    }
    return ModelRow.named(opening.id(), opening.kind().word(), values);
  }
}
