package squaresheet.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.units.Area;
import squaresheet.units.DerivedLength;
import squaresheet.units.Pitch;

/** Works out the closed forms of a roof. */
final class ClosedForms {

  private static final String FEET = "ft";
  private static final String SQUARE_FEET = "sq ft";

  private ClosedForms() {}

  static List<ClosedForm> of(Roof roof) {
    List<ClosedForm> forms = new ArrayList<>();
    for (SharedEdge edge : roof.sharedEdges()) {
      forms.add(equal(
          "shared edge has one length",
          edge.one(),
          edge.one().drawn(),
          edge.other().drawn(),
          tolerance(roof)));
      oneRise(roof, edge).ifPresent(forms::add);
    }
    roof.sides()
        .filter(side -> side.kind() == EdgeKind.RAKE)
        .map(side -> equal(
            "rake reaches up its length",
            side,
            side.up().toDerived(),
            side.drawn(),
            tolerance(roof)))
        .forEach(forms::add);
    roof.planes().stream().flatMap(plane -> ridgeUnderEave(roof, plane)).forEach(forms::add);
    return forms;
  }

  private static double tolerance(Roof roof) {
    return roof.tapeTolerance().toFeet();
  }

  private static ClosedForm equal(
      String rule, Side side, DerivedLength model, DerivedLength expected, double tolerance) {
    return new ClosedForm(
        rule,
        side.show(),
        ClosedForm.Relation.EQUAL,
        model.toFeet(),
        expected.toFeet(),
        FEET,
        tolerance);
  }

  private static Optional<ClosedForm> oneRise(Roof roof, SharedEdge edge) {
    boolean sloped = edge.kind() == EdgeKind.HIP || edge.kind() == EdgeKind.VALLEY;
    return sloped
        ? Optional.of(equal(
            "shared edge has one rise",
            edge.one(),
            rise(roof, edge.one()),
            rise(roof, edge.other()),
            tolerance(roof)))
        : Optional.empty();
  }

  private static Pitch pitch(Roof roof, Side side) {
    return roof.plane(side.plane()).orElseThrow().pitch();
  }

  /** The level distance under the part of the side that goes up the slope. */
  private static DerivedLength run(Roof roof, Side side) {
    return side.up().toDerived().times(1 / pitch(roof, side).factor());
  }

  private static DerivedLength rise(Roof roof, Side side) {
    return run(roof, side).times(pitch(roof, side).slope());
  }

  private static Stream<ClosedForm> ridgeUnderEave(Roof roof, Plane plane) {
    boolean hipped = plane.sides(EdgeKind.HIP).size() == 2
        && plane.sides(EdgeKind.RIDGE).size() == 1
        && plane.sides(EdgeKind.EAVE).size() == 1
        && plane.sides().size() == 4;
    return hipped
        ? Stream.of(new ClosedForm(
            "ridge no longer than its eave",
            "plane " + plane.id(),
            ClosedForm.Relation.AT_MOST,
            plane.length(EdgeKind.RIDGE).toFeet(),
            plane.length(EdgeKind.EAVE).toFeet(),
            FEET,
            tolerance(roof)))
        : Stream.empty();
  }

  static List<ClosedForm> ofSquareCorners(Roof roof) {
    return roof.sharedEdges().stream()
        .filter(edge -> edge.kind() == EdgeKind.HIP || edge.kind() == EdgeKind.VALLEY)
        .filter(edge -> !pitch(roof, edge.other()).isFlat())
        .map(edge -> equal(
            "square corner: length is run times hip factor",
            edge.one(),
            edge.one().drawn(),
            run(roof, edge.one())
                .times(pitch(roof, edge.one()).hipFactor(pitch(roof, edge.other()))),
            tolerance(roof)))
        .toList();
  }

  static ClosedForm footprint(Roof roof, Area.Plan footprint) {
    return new ClosedForm(
        "plan areas close to the footprint",
        "roof",
        ClosedForm.Relation.EQUAL,
        roof.grossPlanArea().squareFeet(),
        footprint.squareFeet(),
        SQUARE_FEET,
        areaTolerance(roof));
  }

  static Optional<ClosedForm> equalPitches(Roof roof, Area.Plan footprint) {
    Pitch pitch = roof.planes().get(0).pitch();
    return roof.planes().stream().allMatch(plane -> plane.pitch().equals(pitch))
        ? Optional.of(new ClosedForm(
            "one pitch: sloped area is footprint times pitch factor",
            "roof",
            ClosedForm.Relation.EQUAL,
            roof.grossArea().squareFeet(),
            pitch.slope(footprint).squareFeet(),
            SQUARE_FEET,
            areaTolerance(roof)))
        : Optional.empty();
  }

  /** What the tape tolerance can make of the area. */
  private static double areaTolerance(Roof roof) {
    Plane.Bounds bounds = roof.slopedAreaBounds();
    Area.Sloped width = bounds.high().minus(bounds.low());
    return width.squareFeet() / 2;
  }
}
