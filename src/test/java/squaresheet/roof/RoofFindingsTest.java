package squaresheet.roof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.geometry.Point;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.roof.PlaneNotes.Meets;
import squaresheet.roof.PlaneNotes.OpeningNotes;
import squaresheet.roof.PlaneNotes.SideNotes;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** What a user reads about bad notes, whole; and that the rest is still resolved. */
class RoofFindingsTest {

  private static final Pitch PITCH = Pitch.of(6);

  @Test
  void a_length_must_be_more_than_zero() {
    assertThat(says(plane("A", new Shape.Rectangle(feet(-3), feet(0)))))
        .containsExactly(
            "plane-not-understood at plane A: eave: eave must be longer than 0, but is -3'",
            "plane-not-understood at plane A: rake: rake must be longer than 0, but is 0\"");
  }

  @Test
  void sides_must_not_cross() {
    PlaneNotes bow =
        plane("A", new Shape.Polygon(List.of(at(0, 0), at(10, 0), at(0, 8), at(10, 8))));
    assertThat(says(bow))
        .containsExactly("plane-not-understood at plane A: shape: sides must meet only at their"
            + " corners, but sides 2 and 4 cross or touch");
  }

  @Test
  void corners_must_lie_apart_and_enclose_an_area() {
    assertThat(says(plane("A", new Shape.Polygon(List.of(at(0, 0), at(10, 0), at(0, 0))))))
        .containsExactly("plane-not-understood at plane A: shape: corners must lie apart, but"
            + " corners 1 and 3 are both at (0\", 0\")");
    assertThat(says(plane("A", new Shape.Polygon(List.of(at(0, 0), at(10, 0), at(20, 0))))))
        .containsExactly("plane-not-understood at plane A: shape: sides must meet only at their"
            + " corners, but sides 1 and 3 cross or touch");
  }

  @Test
  void the_place_written_down_is_the_place_named() {
    Where line = new Where.InLine("tape.csv", 4, "eave");
    PlaneNotes notes = new PlaneNotes(
        "A",
        new Shape.Rectangle(feet(-3), feet(9)),
        Measured.ON_SLOPE,
        PITCH,
        List.of(),
        List.of(),
        Map.of("eave", line, "plane", new Where.InLine("tape.csv", 4, "")));
    assertThat(Roof.resolve(RoofNotes.of(notes)).findings().get(0).where()).isEqualTo(line);
    assertThat(notes.at("rake")).isEqualTo(new Where.InLine("tape.csv", 4, ""));
  }

  @Test
  void a_plane_that_cannot_be_is_left_out_and_the_rest_resolved() {
    Read<Roof> read = Roof.resolve(RoofNotes.of(
        plane("A", new Shape.Rectangle(feet(-3), feet(9))),
        alone("B", new Shape.Rectangle(feet(20), feet(10)))));
    assertThat(read.findings()).hasSize(1);
    assertThat(read.value().orElseThrow().slopedArea().squareFeet()).isEqualTo(200);
  }

  @Test
  void two_planes_must_not_share_a_name() {
    Read<Roof> read = Roof.resolve(RoofNotes.of(
        alone("Porch", new Shape.Rectangle(feet(20), feet(10))),
        alone("porch", new Shape.Rectangle(feet(30), feet(10)))));
    assertThat(sentences(read))
        .containsExactly("plane-named-twice at plane porch: name: a plane's name must be its own,"
            + " but 'porch' is the name of one above; this one is left out");
    assertThat(read.value().orElseThrow().slopedArea().squareFeet()).isEqualTo(200);
  }

  @Test
  void a_roof_needs_a_plane_and_a_plane_a_name() {
    assertThat(sentences(Roof.resolve(RoofNotes.of())))
        .containsExactly("plane-not-understood at roof: planes: a roof must have a plane or more,"
            + " but has none");
    assertThat(says(plane(" ", new Shape.Rectangle(feet(20), feet(10)))))
        .containsExactly("plane-not-understood at plane : name: a plane must have a name, but this"
            + " one has none; it is left out");
  }

  @Test
  void an_edge_that_names_an_unknown_plane_hears_the_nearest() {
    PlaneNotes front = plane("front", new Shape.Rectangle(feet(20), feet(10)))
        .with(SideNotes.of("top", EdgeKind.RIDGE, "bcak"));
    assertThat(says(front, alone("back", new Shape.Rectangle(feet(20), feet(10)))))
        .containsExactly(
            "edge-not-understood at plane front: top: no plane 'bcak'; nearest: 'back'");
  }

  @Test
  void an_edge_must_meet_another_plane_that_has_such_an_edge() {
    PlaneNotes own = plane("A", new Shape.Rectangle(feet(20), feet(10)))
        .with(SideNotes.of("top", EdgeKind.RIDGE, "A"));
    assertThat(says(own))
        .containsExactly(
            "edge-not-understood at plane A: top: ridge must meet another plane, but names its own");
    PlaneNotes hip = plane("A", new Shape.Triangle(feet(20), feet(10)))
        .with(SideNotes.of("right", EdgeKind.HIP, "B"))
        .with(SideNotes.of("left", EdgeKind.OPEN));
    assertThat(says(hip, alone("B", new Shape.Rectangle(feet(20), feet(10)))))
        .containsExactly(
            "edge-not-understood at plane A: right: plane B has no hip free to meet" + " this hip");
    PlaneNotes eave = alone("A", new Shape.Rectangle(feet(20), feet(10)))
        .with(SideNotes.of("bottom", EdgeKind.EAVE, "B"));
    assertThat(says(eave, alone("B", new Shape.Rectangle(feet(20), feet(10)))))
        .containsExactly("edge-not-understood at plane A: bottom: eave meets no other plane, but"
            + " 'B' is given; only a ridge, hip, valley or pitch break does");
  }

  @Test
  void a_side_must_be_one_of_the_shape_and_described_once() {
    PlaneNotes notes = alone("A", new Shape.Rectangle(feet(20), feet(10)))
        .with(SideNotes.of("rigth", EdgeKind.SIDEWALL))
        .with(SideNotes.of("left", EdgeKind.SIDEWALL))
        .with(SideNotes.of("left", EdgeKind.RAKE));
    assertThat(says(notes))
        .containsExactly(
            "edge-not-understood at plane A: rigth: a rectangle has no side 'rigth'; nearest:"
                + " 'right'",
            "edge-not-understood at plane A: left: a side must be described once, but 'left' is"
                + " described again");
  }

  @Test
  void a_ridge_on_one_plane_only_is_reported_unless_none_is_written() {
    assertThat(says(plane("A", new Shape.Rectangle(feet(20), feet(10)))))
        .containsExactly("edge-without-partner at plane A: top: ridge of 20' must be on two planes,"
            + " but is on this one only; name the plane it meets, or write none where it meets"
            + " nothing");
    assertThat(says(alone("A", new Shape.Rectangle(feet(20), feet(10))))).isEmpty();
  }

  @Test
  void the_only_two_ridges_are_taken_for_one_and_said_so() {
    assertThat(says(
            plane("A", new Shape.Rectangle(feet(20), feet(10))),
            plane("B", new Shape.Rectangle(Length.of(20, 1), feet(9)))))
        .containsExactly("edge-paired-by-length at plane A: top: ridge is taken to meet plane B,"
            + " top, the only ridge left for it");
  }

  @Test
  void two_measurements_of_one_edge_must_agree_within_the_tolerance() {
    PlaneNotes front = plane("A", new Shape.Rectangle(feet(84), feet(10)))
        .with(SideNotes.of("top", EdgeKind.RIDGE, "B"));
    Read<Roof> read =
        Roof.resolve(RoofNotes.of(front, plane("B", new Shape.Rectangle(feet(48), feet(10)))));
    assertThat(sentences(read))
        .containsExactly("shared-edge-disagrees at plane A: top: ridge measures 84' here, but 48'"
            + " on plane B, top; the two must agree within 1\"");
    Finding finding = read.findings().get(0);
    assertThat(finding.found()).isEqualTo("84'");
    assertThat(finding.expected()).isEqualTo("48'");
    assertThat(says(front, plane("B", new Shape.Rectangle(Length.of(84, 1), feet(10)))))
        .as("1 in off")
        .isEmpty();
    assertThat(says(
            front, plane("B", new Shape.Rectangle(Length.of(84, 1).plus(new Length(1)), feet(10)))))
        .as("1/320 mm more than 1 in off")
        .hasSize(1);
  }

  @Test
  void the_last_two_edges_of_a_kind_are_one_even_where_they_disagree() {
    assertThat(says(
            plane("A", new Shape.Rectangle(feet(40), feet(10))),
            plane("B", new Shape.Rectangle(Length.of(39, 6), feet(10)))))
        .containsExactly(
            "edge-paired-by-length at plane A: top: ridge is taken to meet plane B, top, the only"
                + " ridge left for it",
            "shared-edge-disagrees at plane A: top: ridge measures 40' here, but 39' 6\" on plane"
                + " B, top; the two must agree within 1\"");
  }

  @Test
  void hips_of_one_length_are_counted_once_whichever_meet() {
    List<PlaneNotes> unnamed = RoofForms.hip(feet(60), feet(30), PITCH).planes().stream()
        .map(plane -> plane(plane.id(), plane.shape(), Measured.IN_PLAN))
        .toList();
    Roof roof = Roof.resolve(new RoofNotes(unnamed)).value().orElseThrow();
    assertThat(roof.count(EdgeKind.HIP)).isEqualTo(4);
    assertThat(roof.count(EdgeKind.RIDGE)).isEqualTo(1);
    assertThat(roof.sharedEdges())
        .filteredOn(edge -> edge.kind() == EdgeKind.HIP)
        .extracting(SharedEdge::paired)
        .containsOnly(SharedEdge.Paired.ALIKE);
  }

  @Test
  void one_edge_must_not_be_of_two_kinds() {
    PlaneNotes lower = plane("A", new Shape.Rectangle(feet(20), feet(10)))
        .with(SideNotes.of("top", EdgeKind.PITCH_BREAK).with(new Meets.Named("B", "top")));
    assertThat(says(lower, plane("B", new Shape.Rectangle(feet(20), feet(10)))))
        .containsExactly("edge-not-understood at plane A: top: one edge must be one kind, but is"
            + " pitch break here and ridge on plane B, top");
  }

  @Test
  void a_hip_leans_in_and_a_valley_out() {
    PlaneNotes notes = alone("A", new Shape.Trapezoid(feet(24), feet(30), feet(10)))
        .with(SideNotes.of("right", EdgeKind.HIP).with(new Meets.Nothing()))
        .with(SideNotes.of("left", EdgeKind.VALLEY).with(new Meets.Nothing()));
    assertThat(says(notes))
        .containsExactly("edge-against-slope at plane A: right: hip must lean in from the eave, but"
            + " the right side of this trapezoid leans out or stands square");
  }

  @Test
  void a_ridge_lies_above_and_an_eave_below() {
    PlaneNotes notes = plane("A", new Shape.Rectangle(feet(24), feet(10)))
        .with(SideNotes.of("top", EdgeKind.EAVE))
        .with(SideNotes.of("bottom", EdgeKind.RIDGE).with(new Meets.Nothing()));
    assertThat(says(notes))
        .containsExactly(
            "edge-against-slope at plane A: bottom: ridge must lie above its plane, but the bottom"
                + " side does not",
            "edge-against-slope at plane A: top: eave must lie below its plane, but the top side"
                + " does not");
  }

  @Test
  void a_taped_edge_must_be_as_drawn() {
    PlaneNotes notes = alone("A", new Shape.Triangle(feet(6), feet(4)))
        .with(SideNotes.of("right", EdgeKind.HIP).with(new Meets.Nothing()).taped(Length.of(5, 1)))
        .with(SideNotes.of("left", EdgeKind.HIP).with(new Meets.Nothing()).taped(Length.of(5, 2)));
    assertThat(says(notes))
        .containsExactly("taped-edge-disagrees at plane A: left: hip on the left measures 5' 2\" by"
            + " the tape, but the other lengths of the plane make it 5'; they must agree within"
            + " 1\"");
  }

  @Test
  void a_tape_reading_must_be_a_length() {
    PlaneNotes notes = alone("A", new Shape.Rectangle(feet(6), feet(4)))
        .with(SideNotes.of("right", EdgeKind.RAKE).taped(Length.ZERO));
    assertThat(says(notes))
        .containsExactly(
            "edge-not-understood at plane A: right: rake must be longer than 0, but the"
                + " tape says 0\"");
  }

  @Test
  void an_opening_must_lie_inside_apart_from_others_and_be_smaller() {
    PlaneNotes notes = alone("A", new Shape.Rectangle(feet(20), feet(10)))
        .with(opening("stack", 4, 4).at(feet(17), feet(2)))
        .with(opening("one", 4, 4).at(feet(2), feet(2)))
        .with(opening("two", 4, 4).at(feet(5), feet(5)))
        .with(opening("beside", 4, 4).at(feet(6), feet(1)))
        .with(opening("huge", 20, 10).at(feet(0), feet(0)))
        .with(opening("thin", 0, 4).at(feet(0), feet(0)));
    Read<Roof> read = Roof.resolve(RoofNotes.of(notes));
    assertThat(sentences(read))
        .containsExactly(
            "opening-not-understood at plane A: stack: chimney 'stack': it must lie inside the"
                + " plane, but reaches outside; it is left out",
            "opening-not-understood at plane A: two: chimney 'two': it must not overlap another,"
                + " but overlaps 'one'; it is left out",
            "opening-not-understood at plane A: huge: chimney 'huge': openings must be smaller than"
                + " the plane, but this one leaves nothing; it is left out",
            "opening-not-understood at plane A: thin: chimney 'thin': eave must be longer than 0,"
                + " but is 0\"; it is left out");
    assertThat(read.value().orElseThrow().slopedArea().squareFeet()).isEqualTo(200 - 32);
  }

  @Test
  void an_opening_without_a_place_counts_in_the_area_and_says_so() {
    Read<Roof> read = Roof.resolve(RoofNotes.of(
        alone("A", new Shape.Rectangle(feet(20), feet(10))).with(opening("stack", 3, 2))));
    assertThat(sentences(read))
        .containsExactly("opening-not-placed at plane A: stack: chimney 'stack': its position was"
            + " not measured, so it counts in the area and not in the layout of the courses");
    Plane plane = read.value().orElseThrow().planes().get(0);
    assertThat(plane.slopedArea().squareFeet()).isEqualTo(194);
    assertThat(plane.region().holes()).isEmpty();
    assertThat(plane.unplacedOpenings()).hasSize(1);
  }

  @Test
  void an_unknown_shape_and_a_missing_length_are_named() {
    Where line = new Where.InLine("tape.csv", 7, "shape");
    assertThat(Shape.read("trapezium", Map.of(), line).findings().get(0).says())
        .isEqualTo("no shape 'trapezium'; nearest: 'trapezoid'");
    assertThat(Shape.read("hexagon", Map.of(), line).findings().get(0).says())
        .isEqualTo("no shape 'hexagon'; known: 'parallelogram', 'rectangle', 'trapezoid',"
            + " 'triangle'");
    assertThat(Shape.read("Triangle", Map.of("eave", feet(9)), line)
            .findings()
            .get(0)
            .says())
        .isEqualTo("a triangle must have a height, but has none");
    assertThat(Shape.read("rectangle", Map.of("eave", feet(9), "rake", feet(4)), line)
            .value())
        .contains(new Shape.Rectangle(feet(9), feet(4)));
  }

  @Test
  void an_unknown_edge_kind_hears_its_neighbours() {
    Where line = new Where.InLine("tape.csv", 7, "top");
    assertThat(EdgeKind.read("Ridges", line).value()).contains(EdgeKind.RIDGE);
    assertThat(EdgeKind.read("pitch-break", line).value()).contains(EdgeKind.PITCH_BREAK);
    Finding finding = EdgeKind.read("rigde", line).findings().get(0);
    assertThat(finding.says()).isEqualTo("no kind of edge 'rigde'; nearest: 'ridge'");
    assertThat(finding.where()).isEqualTo(line);
    assertThat(Opening.Kind.read("chimny", line).findings().get(0).says())
        .isEqualTo("no kind of opening 'chimny'; nearest: 'chimney'");
  }

  @Test
  void what_an_edge_meets_is_read_as_it_is_written() {
    assertThat(List.of(
            new Meets.Unsaid(),
            new Meets.Nothing(),
            new Meets.Named("B", ""),
            new Meets.Named("B", "left")))
        .allSatisfy(meets -> assertThat(Meets.read(meets.written())).isEqualTo(meets));
  }

  @Test
  void a_partner_reads_as_people_write_it() {
    assertThat(Meets.read("")).isEqualTo(new Meets.Unsaid());
    assertThat(Meets.read(" None ")).isEqualTo(new Meets.Nothing());
    assertThat(Meets.read("-")).isEqualTo(new Meets.Nothing());
    assertThat(Meets.read("back")).isEqualTo(new Meets.Named("back", ""));
    assertThat(Meets.read("B / Left")).isEqualTo(new Meets.Named("B", "left"));
  }

  private static OpeningNotes opening(String id, long width, long height) {
    return OpeningNotes.of(id, Opening.Kind.CHIMNEY, feet(width), feet(height));
  }

  private static PlaneNotes plane(String id, Shape shape) {
    return plane(id, shape, Measured.ON_SLOPE);
  }

  private static PlaneNotes plane(String id, Shape shape, Measured measured) {
    return new PlaneNotes(id, shape, measured, PITCH);
  }

  /** A plane whose top meets nothing. */
  private static PlaneNotes alone(String id, Shape shape) {
    PlaneNotes plane = plane(id, shape);
    return shape.sideNames().contains("top")
        ? plane.with(new SideNotes("top", Optional.empty(), Optional.empty(), new Meets.Nothing()))
        : plane;
  }

  private static List<String> says(PlaneNotes... planes) {
    return sentences(Roof.resolve(RoofNotes.of(planes)));
  }

  private static List<String> sentences(Read<Roof> read) {
    return read.findings().stream()
        .map(finding -> finding.info().id() + " at " + finding.where() + ": " + finding.says())
        .toList();
  }

  private static Length feet(long feet) {
    return Length.of(feet, 0);
  }

  private static Point at(long right, long up) {
    return new Point(feet(right), feet(up));
  }
}
