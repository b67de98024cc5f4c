package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.formula.Formula;
import squaresheet.roof.Opening;
import squaresheet.roof.Plane;
import squaresheet.roof.SharedEdge;
import squaresheet.roof.Side;
import squaresheet.sheet.Address;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.takeoff.Rule;

/** Every straight edge once: what two planes share stands in one row with the lengths measured on both. */
final class EdgesSheet {

  static final String NAME = "Edges";

  private static final int HEADING = 3;
  private static final String FEET = "0.00##";

  private final JobParts parts;
  private final PlanesSheet planes;
  private final CornersSheet corners;
  private final OpeningsSheet openings;
  private final List<EdgeLine> lines;
  private final DraftSheet sheet;
  private final TableDraft table;

  EdgesSheet(
      JobParts parts,
      DraftSheet sheet,
      PlanesSheet planes,
      CornersSheet corners,
      OpeningsSheet openings) {
    this.parts = parts;
    this.sheet = sheet;
    this.planes = planes;
    this.corners = corners;
    this.openings = openings;
    lines = EdgeLine.of(parts.roof());
    table = new TableDraft(sheet, HEADING, lines.size());
    inputs();
    lengths();
    rules();
  }

  /**
   * A row: one edge.
   *
   * @param name as the takeoff calls it
   * @param plane the plane it was measured on
   * @param kind what it is
   * @param side the side, where it is one
   * @param other the side of the other plane, where two share it
   * @param opening the opening it belongs to, where it is part of one
   */
  private record EdgeLine(
      String name,
      String plane,
      String kind,
      Optional<Side> side,
      Optional<Side> other,
      Optional<Opening> opening) {

    static List<EdgeLine> of(squaresheet.roof.Roof roof) {
      List<EdgeLine> lines = new ArrayList<>();
      for (Plane plane : roof.planes()) {
        plane.sides().stream()
            .filter(side -> roof.sharedBy(side).isEmpty())
            .forEach(side -> lines.add(of(side, Optional.empty())));
        roof.sharedEdges().stream()
            .filter(shared -> shared.one().plane().equals(plane.id()))
            .forEach(shared -> lines.add(of(shared)));
        plane.openings().forEach(opening -> lines.addAll(around(plane, opening)));
      }
      return lines;
    }

    private static EdgeLine of(SharedEdge shared) {
      return of(shared.one(), Optional.of(shared.other()));
    }

    private static EdgeLine of(Side side, Optional<Side> other) {
      return new EdgeLine(
          side.plane() + " " + side.name(),
          side.plane(),
          side.kind().word(),
          Optional.of(side),
          other,
          Optional.empty());
    }

    private static List<EdgeLine> around(Plane plane, Opening opening) {
      return List.of(
          part(plane, opening, "front", "opening front"),
          part(plane, opening, "back", "opening back"),
          part(plane, opening, "left", "opening side"),
          part(plane, opening, "right", "opening side"));
    }

    private static EdgeLine part(Plane plane, Opening opening, String part, String kind) {
      return new EdgeLine(
          opening.id() + " " + part,
          plane.id(),
          kind,
          Optional.empty(),
          Optional.empty(),
          Optional.of(opening));
    }
  }

  private void inputs() {
    table.add(Column.of("edge_name", "Edge", 20, item -> Entries.input(lines.get(item).name)));
    table.add(Column.of("edge_kind", "Edge kind", 13, item -> Entries.input(lines.get(item).kind))
        .oneOf(kinds()));
    table.add(Column.of("edge_plane", "Plane", 14, item -> Entries.input(lines.get(item).plane)));
    side("edge_side", "Side", 9, item -> lines.get(item).side.map(Side::name));
    side("edge_meets", "Meets plane", 14, item -> meets(lines.get(item)));
    side("edge_other_side", "Its side", 9, item -> lines.get(item).other.map(Side::name));
    table.add(Column.of(
            "edge_opening",
            "Part of",
            10,
            item -> Entries.input(
                lines.get(item).opening.map(opening -> opening.kind().word()).orElse("none")))
        .oneOf(openingKinds()));
  }

  /** The plane on its other side, or what was said of it where no such plane is known. */
  private Optional<String> meets(EdgeLine line) {
    return line.other
        .map(Side::plane)
        .or(() -> line.side.map(parts::meets).filter(said -> !said.isEmpty()));
  }

  private List<String> kinds() {
    return choices("edge_kind");
  }

  private List<String> openingKinds() {
    return choices("edge_opening");
  }

  private List<String> choices(String name) {
    return parts.rulebook().rule(name).map(Rule::choices).orElse(List.of());
  }

  private void side(
      String name,
      String heading,
      double width,
      java.util.function.IntFunction<Optional<String>> of) {
    table.add(Column.of(name, heading, width, item -> of.apply(item)
        .map(Entries::input)
        .orElseGet(Entries::blankInput)));
  }

  private void lengths() {
    LengthColumns taped = new LengthColumns(table, parts.unit());
    table.add(Column.of(
        "edge_by_shape", "Length by shape, ft", 10, item -> Entries.computed(byShape(item), FEET)));
    taped.addIfAny("edge_taped", "Taped", 9, item -> lines.get(item).side.flatMap(Side::taped));
    table.add(Column.of("edge_other_by_shape", "Other plane: length by shape, ft", 10, item -> lines
        .get(item)
        .other
        .map(side -> Entries.computed(byShape(side), FEET))
        .orElseGet(Entry::blank)));
    taped.addIfAny("edge_other_taped", "Other plane: taped", 9, item -> lines
        .get(item)
        .other
        .flatMap(Side::taped));
    table.add(Column.of("edge_length", "Length, ft", 10, item -> Entries.computed(used(item), FEET))
        .inTotal());
    table.add(Column.of(
        "edge_apart",
        "Measured twice: apart by, in",
        10,
        item -> Entries.computed(apart(item), "0.0##")));
  }

  private String first(int item) {
    String taped = table.here(item, "edge_taped");
    return "IF(" + taped + "<>\"\"," + taped + "," + table.here(item, "edge_by_shape") + ")";
  }

  private String second(int item) {
    String taped = table.here(item, "edge_other_taped");
    return "IF(" + taped + "<>\"\"," + taped + "," + table.here(item, "edge_other_by_shape") + ")";
  }

  private String used(int item) {
    return ifAlone(item, first(item), "(" + first(item) + "+" + second(item) + ")/2");
  }

  private String apart(int item) {
    return ifAlone(item, "0", "ABS(" + first(item) + "-" + second(item) + ")*12");
  }

  /** An edge stands alone where nothing is typed for the plane it meets, or none, or where nothing was measured on that plane. */
  private String ifAlone(int item, String alone, String shared) {
    String meets = "TRIM(" + table.here(item, "edge_meets") + ")";
    String unmeasured = "AND(" + table.here(item, "edge_other_by_shape") + "=\"\","
        + table.here(item, "edge_other_taped") + "=\"\")";
    return "IF(OR(" + meets + "=\"\"," + meets + "=\"none\"," + meets + "=\"-\"," + unmeasured
        + ")," + alone + "," + shared + ")";
  }

  private String byShape(int item) {
    EdgeLine line = lines.get(item);
    if (line.opening.isPresent()) {
      Address length = openings.length(line.opening.get().id(), !line.kind.endsWith("side"));
      return length.toString();
    }
    return byShape(line.side.orElseThrow());
  }

  /** The closed form of a side's length over the cells of its plane. */
  private String byShape(Side side) {
    int item = planes.item(side.plane());
    if (side.name().startsWith("side ")) {
      int number = Integer.parseInt(side.name().substring("side ".length()));
      return corners.side(parts.planes().get(item).id(), number - 1).toString();
    }
    String eave = planes.table().there(item, "eave_width");
    String top = planes.table().there(item, "top_width");
    String offset = planes.table().there(item, "plane_offset_used");
    String height = planes.table().there(item, "slope_height");
    return switch (side.name()) {
      case "bottom" -> eave;
      case "top" -> top;
      case "left" -> "SQRT(" + offset + "^2+" + height + "^2)";
      default -> "SQRT((" + eave + "-" + offset + "-" + top + ")^2+" + height + "^2)";
    };
  }

  private void rules() {
    for (Rule rule : parts.rulebook().rules()) {
      if (rule.per() == Rule.Per.EDGE && rule.isWorkedOut()) {
        Formula formula = parts.rulebook().formula(rule.name()).orElseThrow();
        table.add(Column.of(
            rule.name(),
            Entries.heading(rule.label(), rule),
            10,
            item -> Entries.computed(
                RowNames.rowFormula(
                    formula,
                    name ->
                        table.has(name) ? Optional.of(table.here(item, name)) : Optional.empty()),
                Entries.format(rule))));
      }
    }
  }

  void write(Draft draft) {
    Sheets.head(
        sheet,
        "Edges",
        "Every edge once. Where two planes meet, both lengths stand in the one row and the middle"
            + " counts. A taped length goes before the one by shape.");
    table.write(draft);
    Sheets.table(sheet, HEADING, 1);
  }
}
