package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Finding;
import squaresheet.geometry.Point;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Graduation;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

class RoofLayoutTest {

  private static final Shape GABLE = new Shape.Rectangle(Laid.in("30'"), Laid.in("15'"));

  @Test
  void a_roof_measured_in_millimetres_takes_as_many_pieces_as_in_feet() {
    Shape metric =
        new Shape.Trapezoid(Laid.in("9144 mm"), Laid.in("3048 mm"), Laid.in("4876.8 mm"));
    Shape imperial = new Shape.Trapezoid(Laid.in("30'"), Laid.in("10'"), Laid.in("16'"));
    LayoutSettings settings = LayoutSettings.standard();
    LayoutSettings millimetres = settings.with(settings.spacing().on(Graduation.MILLIMETRE));
    CoursePlan one = Laid.plan(Laid.METRIC, settings.with(exact(settings)), imperial);
    CoursePlan two = Laid.plan(Laid.METRIC, settings.with(exact(millimetres)), metric);
    assertThat(two.pieces()).as("1 ft is 304.8 mm exactly").isEqualTo(one.pieces());
    assertThat(two.waste()).isEqualTo(one.waste());
  }

  private static LayoutSettings.Spacing exact(LayoutSettings settings) {
    return settings.spacing().withInterval(Laid.in("28 1/8\""));
  }

  @Test
  void first_pieces_on_a_metric_tape_are_cut_to_whole_millimetres_no_nearer_than_the_minimum() {
    LayoutSettings settings = LayoutSettings.standard();
    RoofLayout layout = Laid.roof(
        Laid.METRIC,
        settings.with(settings.spacing().on(Graduation.MILLIMETRE)),
        Laid.plane("A", GABLE));
    assertThat(layout.stagger().firstPieces())
        .as("by hand: 6 in is 152.4 mm, on the tape 153; 1000.125 less 153 is 847.125, cut to 847")
        .containsExactly(
            Laid.in("39 3/8\""),
            Laid.in("847 mm"),
            Laid.in("694 mm"),
            Laid.in("541 mm"),
            Laid.in("388 mm"),
            Laid.in("235 mm"));
    assertThat(layout.stagger().least()).isGreaterThanOrEqualTo(Laid.in("153 mm"));
  }

  @Test
  void halves_of_one_shingle_may_lie_on_two_planes() {
    RoofLayout layout = Laid.roof(
        Laid.STRIP,
        Laid.begun(Laid.FLUSH, "12\"", "36\""),
        Laid.plane("A", new Shape.Rectangle(Laid.in("7'"), Laid.in("5\""))),
        Laid.plane("B", new Shape.Rectangle(Laid.in("5'"), Laid.in("10\""))));
    assertThat(layout.pieces(LayoutSettings.Reuse.NONE))
        .as("by hand: A 12 36 36; B 12 36 12 and 36 24")
        .isEqualTo(new Pieces(4, 4, 0));
    assertThat(layout.pieces(LayoutSettings.Reuse.PLANE))
        .as("by hand: on B 12 left and 12 right are one strip; on A nothing is")
        .isEqualTo(new Pieces(4, 4, 1));
    assertThat(layout.pieces(LayoutSettings.Reuse.ROOF))
        .as("by hand: 12 of A with 24 of B, and the two 12 of B")
        .isEqualTo(new Pieces(4, 4, 2));
  }

  @Test
  void starter_runs_along_eaves_and_rakes() {
    RoofLayout layout = Laid.roof(Laid.STRIP, LayoutSettings.standard(), Laid.plane("A", GABLE));
    assertThat(layout.starter().run())
        .as("by hand: 361 in of eave with its overhangs, two rakes of 180")
        .isEqualTo(Laid.in("721\""));
    assertThat(layout.starter().pieces())
        .as(
            "by hand: 7, nine of 36, 30 along the eave; five of 36 up each rake; 7 and 30 are longer than 36")
        .isEqualTo(new Pieces(19, 2, 0));
    assertThat(layout.starter().waste().toDouble())
        .as("by hand: 21 pieces of 36 over 721")
        .isCloseTo(21 * 36.0 / 721 - 1, within(1e-12));
  }

  @Test
  void starter_may_be_kept_off_the_rakes() {
    LayoutSettings.Starting usual = LayoutSettings.Starting.standard();
    LayoutSettings eavesOnly = LayoutSettings.standard()
        .with(new LayoutSettings.Starting(
            usual.firstCut(), false, usual.minimum(), usual.nailClear()));
    RoofLayout layout = Laid.roof(Laid.STRIP, eavesOnly, Laid.plane("A", GABLE));
    assertThat(layout.starter().run())
        .as("by hand: 360 and two halves")
        .isEqualTo(Laid.in("361\""));
  }

  @Test
  void cap_covers_every_hip_and_ridge_once() {
    RoofLayout layout = Laid.roof(
        Laid.METRIC, LayoutSettings.standard(), Laid.plane("A", GABLE), Laid.plane("B", GABLE));
    assertThat(layout.cap().run()).as("one ridge of 30 ft, not two").isEqualTo(Laid.in("30'"));
    assertThat(layout.cap().pieces())
        .as("by hand: 360 / 5.625 is 64 exactly")
        .isEqualTo(new Pieces(64, 0, 0));
  }

  @Test
  void a_diagonal_that_is_a_whole_number_of_caps_takes_no_more() {
    Shape shape =
        new Shape.Triangle(Laid.in("225\""), Laid.in("150\""), Optional.of(Laid.in("112 1/2\"")));
    RoofLayout layout = Laid.roof(Laid.METRIC, LayoutSettings.standard(), Laid.plane("A", shape));
    assertThat(layout.cap().pieces())
        .as("by hand: 3-4-5, hips of 187.5 in, which is 33 1/3 caps each")
        .isEqualTo(new Pieces(66, 2, 0));
    Shape longer =
        new Shape.Triangle(Laid.in("270\""), Laid.in("180\""), Optional.of(Laid.in("135\"")));
    assertThat(Laid.roof(Laid.METRIC, LayoutSettings.standard(), Laid.plane("A", longer))
            .cap()
            .pieces())
        .as("by hand: 3-4-5, hips of 225 in, which is 40 caps each exactly")
        .isEqualTo(new Pieces(80, 0, 0));
  }

  @Test
  void rounding_the_interval_down_costs_courses_and_shingles() {
    LayoutSettings rounded =
        Laid.begun(Laid.FLUSH, "36\"").with(Laid.FLUSH.spacing().every(5, Graduation.INCH));
    CoursePlan plan = Laid.plan(
        Laid.shingle("36\"", "13 1/4\"", "5 5/8\""),
        rounded,
        new Shape.Rectangle(Laid.in("36'"), Laid.in("15'")));
    assertThat(plan.reach().courses()).as("by hand: 180 over 5.6 is 32.1").isEqualTo(33);
    assertThat(plan.reach().extra()).as("by hand: 180 over 5.625 is 32").isEqualTo(1);
    assertThat(plan.shinglesForRounding()).as("by hand: one course of 12").isEqualTo(12);
  }

  @Test
  void the_search_leaves_no_slivers_where_there_is_a_way() {
    Shape shape = new Shape.Rectangle(Laid.in("30' 1\""), Laid.in("10'"));
    LayoutSettings settings = Laid.begun(Laid.FLUSH, "36\"", "30\"", "24\"", "18\"", "12\"", "6\"");
    CoursePlan plan = Laid.plan(Laid.STRIP, settings, shape);
    assertThat(plan.slivers())
        .as("by hand: 361 less 36 less nine strips leaves 1 in, in every sixth of 24 courses")
        .isEqualTo(4);
    CoursePlan best = plan.with(plan.bestStagger(Graduation.HALF));
    assertThat(best.slivers()).isZero();
    assertThat(best.stagger().violations()).isEmpty();
    assertThat(best.pieces().used()).isLessThanOrEqualTo(plan.pieces().used());
  }

  @Test
  void what_is_wrong_is_said_and_the_rest_laid_out() {
    LayoutSettings settings = LayoutSettings.standard()
        .with(LayoutSettings.Overhang.standard().withEave(Laid.in("1 1/2\"")))
        .with(LayoutSettings.Spacing.standard()
            .withExposure(Laid.in("6\""))
            .withInterval(Laid.in("30\"")))
        .with(LayoutSettings.Joints.standard()
            .withFirstPieces(List.of(Laid.in("36\""), Laid.in("33\""))));
    PlaneNotes low = new PlaneNotes(
        "porch",
        new Shape.Rectangle(Laid.in("2'"), Laid.in("4\"")),
        PlaneNotes.Measured.ON_SLOPE,
        Pitch.of(1));
    RoofLayout layout = Laid.roof(Laid.METRIC, settings, low, Laid.plane("main", GABLE));
    assertThat(layout.findings())
        .extracting(RoofLayoutTest::said)
        .containsExactly(
            "layout: exposure | exposure laid must be at most the 5 5/8\" of shingle, but is 6\"",
            "layout: interval | lines every 5 courses may stand at most 2' 4 1/8\" apart, but 2' 6\" apart stretches the"
                + " exposure to 6.000 in, past the product's 5 5/8\"",
            "layout: first pieces | joints of courses 1 and 2 must be at least 6\" apart, but are 3\" apart",
            "layout: first pieces | joints of courses 2 and 1 of the next repeat must be at least 6\" apart, but are 3\""
                + " apart",
            "layout: eave overhang | overhang at the eave must be 1/4\" to 1\", but is 1 1/2\"",
            "plane porch: pitch | pitch must be at least the 2:12 that shingle may be laid on, but is 1:12",
            "plane porch: height | height up the slope must be at least one course of 5 5/8\", but is 4\"; one course is"
                + " laid, cut to fit",
            "plane porch: bottom starter | a starter piece must be no longer than its eave of 2' 1\" to be laid whole, but"
                + " is 39 3/8\"; one cut piece covers it");
    assertThat(layout.interval().laid()).as("rounded down instead").isEqualTo(Laid.in("28 1/8\""));
    assertThat(layout.plans().get(0).courses()).isEqualTo(1);
    assertThat(layout.plans().get(1).courses())
        .as("by hand: 181.5 over 5.625 is 32.3")
        .isEqualTo(33);
  }

  @Test
  void a_starter_that_drifts_into_the_joints_above_is_said_with_its_cure() {
    Roof roof = Roof.resolve(RoofNotes.of(Laid.plane("main", GABLE))).value().orElseThrow();
    RoofLayout layout = RoofLayout.of(
            roof, Laid.products(Laid.METRIC, "36\""), LayoutSettings.standard())
        .value()
        .orElseThrow();
    assertThat(layout.findings())
        .extracting(RoofLayoutTest::said)
        .containsExactly(
            "plane main: bottom starter | starter joints must stand at least 7\" from joints of the first course, but 3' 7\""
                + " from the start one stands 3 5/8\" from it; a first piece of 32 3/8\" puts that off to 26' 8 3/8\"");
  }

  @Test
  void lines_out_of_parallel_are_said_when_they_show() {
    Shape shape = new Shape.Polygon(List.of(
        Point.ORIGIN,
        new Point(Laid.in("30'"), Length.ZERO),
        new Point(Laid.in("30'"), Laid.in("14' 9\"")),
        new Point(Length.ZERO, Laid.in("15'"))));
    PlaneNotes plane = Laid.plane("A", shape)
        .with(PlaneNotes.SideNotes.of("side 2", EdgeKind.RAKE))
        .with(PlaneNotes.SideNotes.of("side 3", EdgeKind.RIDGE))
        .with(PlaneNotes.SideNotes.of("side 4", EdgeKind.RAKE));
    RoofLayout layout = Laid.roof(Laid.METRIC, LayoutSettings.standard(), plane);
    assertThat(layout.plans().get(0).lines().taperPerLine().inches())
        .as("by hand: 3 over 167.5, times 28.125")
        .isCloseTo(3 / 167.5 * 28.125, within(1e-9));
    assertThat(layout.findings())
        .extracting(RoofLayoutTest::said)
        .contains(
            "plane A: lines | lines must differ by at most 1/4\" from one end of the eave to the other not to be seen, but"
                + " each differs by 0.50 in");
  }

  @Test
  void rakes_that_the_tape_makes_unequal_share_the_difference_among_the_lines() {
    PlaneNotes plane = Laid.plane("A", new Shape.Rectangle(Laid.in("30'"), Laid.in("15'")))
        .with(PlaneNotes.SideNotes.of("left", EdgeKind.RAKE).taped(Laid.in("15'")))
        .with(PlaneNotes.SideNotes.of("right", EdgeKind.RAKE).taped(Laid.in("14' 9\"")));
    Lines lines =
        Laid.roof(Laid.METRIC, LayoutSettings.standard(), plane).plans().get(0).lines();
    assertThat(lines.taperPerLine().inches())
        .as("by hand: 3 over 167.5, times 28.125")
        .isCloseTo(3 / 167.5 * 28.125, within(1e-9));
    assertThat(lines.marks().get(0).at().get(0)).isEqualTo(Laid.in("28 1/8\""));
    assertThat(lines.marks().get(1).at().get(0))
        .as("by hand: 28.125 times 164.5 over 167.5 is 27.62, on the tape 27 9/16")
        .isEqualTo(Laid.in("27 9/16\""));
  }

  @Test
  void a_metric_layout_speaks_of_millimetres_only() {
    LayoutSettings settings = LayoutSettings.standard()
        .with(LayoutSettings.Overhang.standard().withEave(Laid.in("1 1/2\"")))
        .with(LayoutSettings.Spacing.standard()
            .on(Graduation.MILLIMETRE)
            .withInterval(Laid.in("30\"")))
        .with(LayoutSettings.Joints.standard()
            .withFirstPieces(List.of(Laid.in("36\""), Laid.in("33\"")))
            .withNextButOne(Laid.in("3\"")));
    PlaneNotes low = Laid.plane("porch", new Shape.Rectangle(Laid.in("2'"), Laid.in("4\"")));
    PlaneNotes bent = Laid.plane("A", new Shape.Rectangle(Laid.in("29' 3\""), Laid.in("15'")))
        .with(PlaneNotes.SideNotes.of("left", EdgeKind.RAKE).taped(Laid.in("15'")))
        .with(PlaneNotes.SideNotes.of("right", EdgeKind.RAKE).taped(Laid.in("14' 9\"")));
    Roof roof = Roof.resolve(RoofNotes.of(low, bent)).value().orElseThrow();
    List<Finding> said = RoofLayout.of(roof, Laid.products(Laid.METRIC, "36\""), settings)
        .value()
        .orElseThrow()
        .findings();
    assertThat(said.stream().map(finding -> finding.info().id()))
        .contains(
            "interval-stretches-exposure",
            "eave-overhang-outside-limits",
            "stagger-under-minimum",
            "joints-line-up-next-but-one",
            "plane-under-one-course",
            "starter-longer-than-eave",
            "starter-joints-clash",
            "course-taper-shows",
            "slivers-at-rake");
    assertThat(said).allSatisfy(finding -> assertThat(finding.says())
        .doesNotContain("\"")
        .doesNotContainPattern("\\d'|\\d in\\b"));
  }

  @Test
  void without_a_shingle_there_is_nothing_to_lay() {
    Roof roof = Roof.resolve(RoofNotes.of(Laid.plane("main", GABLE))).value().orElseThrow();
    assertThat(RoofLayout.of(
                roof,
                new squaresheet.product.Selection(java.util.Map.of()),
                LayoutSettings.standard())
            .findings())
        .extracting(RoofLayoutTest::said)
        .containsExactly(
            "layout: shingle | a shingle must be chosen for courses to be laid out, but none is");
  }

  private static String said(Finding finding) {
    return finding.where() + " | " + finding.says();
  }
}
