package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.roof.Shape;
import squaresheet.units.Length;

class CoursePlanTest {

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # eave | rake   | first     | courses | full | cut | pairs | source
        36'  | 10'    | 36"       | 24      | 288  | 0   | 0     | by hand: 120/5 courses of 432/36 whole strips
        36'  | 10'    | 36" 18"   | 24      | 276  | 24  | 12    | by hand: 12 courses of 12; 12 of 11 between two halves, each pair one strip
        36'  | 10' 1" | 36"       | 25      | 300  | 0   | 0     | by hand: 121/5 begins a 25th course
        37'  | 10'    | 36"       | 24      | 288  | 24  | 0     | by hand: 444 = 12 strips and 12 in, all right ends
        37'  | 10'    | 36" 24"   | 24      | 276  | 36  | 12    | by hand: 12 courses of 12 and 12 in right; 12 of 24, 11 whole, 24; only 24 and 12 fit
        10"  | 10'    | 36"       | 24      | 0    | 24  | 0     | by hand: narrower than a strip
      """)
  void a_rectangle_is_counted_by_hand(
      Length eave,
      Length rake,
      String first,
      int courses,
      long full,
      long cut,
      long pairs,
      String source) {
    CoursePlan plan = Laid.plan(
        Laid.STRIP, Laid.begun(Laid.FLUSH, first.split(" ")), new Shape.Rectangle(eave, rake));
    assertThat(plan.courses()).as(source).isEqualTo(courses);
    assertThat(plan.pieces()).as(source).isEqualTo(new Pieces(full, cut, pairs));
  }

  @Test
  void overhangs_are_covered_too() {
    CoursePlan plan = Laid.plan(
        Laid.STRIP,
        Laid.begun(LayoutSettings.standard(), "36\""),
        new Shape.Rectangle(Laid.in("36'"), Laid.in("10'")));
    assertThat(plan.courses()).as("by hand: 120.75/5 begins a 25th course").isEqualTo(25);
    assertThat(plan.pieces())
        .as("by hand: 433 in is 12 strips and 1 in")
        .isEqualTo(new Pieces(300, 25, 0));
  }

  @Test
  void waste_is_what_the_pieces_cover_over_the_area() {
    CoursePlan plan = Laid.plan(
        Laid.STRIP,
        Laid.begun(Laid.FLUSH, "36\""),
        new Shape.Rectangle(Laid.in("37'"), Laid.in("10'")));
    assertThat(plan.waste().toDouble())
        .as("by hand: 312 strips of 1.25 sq ft over 370 sq ft")
        .isCloseTo(312 * 1.25 / 370 - 1, within(1e-12));
  }

  @Test
  void a_hip_course_is_as_long_as_similar_triangles_say() {
    CoursePlan plan = Laid.plan(
        Laid.METRIC,
        LayoutSettings.standard(),
        new Shape.Triangle(
            Laid.in("30'"), Laid.in("13' 5\""), java.util.Optional.of(Laid.in("11'"))));
    for (int course = 0; course < plan.courses(); course++) {
      double low = -0.75 + course * 5.625;
      CoursePlan.Stretch stretch = plan.course(course).stretches().get(0);
      assertThat(stretch.to().inches() - stretch.from().inches())
          .as("similar triangles: base times what is left of the height, course " + course)
          .isCloseTo(360 * (161 - low) / 161, within(1e-6));
    }
  }

  @Test
  void at_a_valley_the_upper_edge_of_the_shingle_governs() {
    CoursePlan plan = Laid.plan(
        Laid.METRIC,
        Laid.FLUSH,
        new Shape.Trapezoid(Laid.in("10'"), Laid.in("20'"), Laid.in("10'")));
    CoursePlan.Stretch second = plan.course(1).stretches().get(0);
    assertThat(second.to().inches() - second.from().inches())
        .as("by hand: each side leans out 60 in over 120, so 18.875 up it is 120 + 18.875 wide")
        .isCloseTo(138.875, within(1e-9));
  }

  @Test
  void a_lap_past_a_valley_is_added_along_the_course() {
    Shape shape = new Shape.Trapezoid(Laid.in("10'"), Laid.in("20'"), Laid.in("10'"));
    LayoutSettings lapped = Laid.FLUSH.with(Laid.FLUSH.overhang().withValley(Laid.in("12\"")));
    CoursePlan.Stretch cut =
        Laid.plan(Laid.METRIC, Laid.FLUSH, shape).course(1).stretches().get(0);
    CoursePlan.Stretch past =
        Laid.plan(Laid.METRIC, lapped, shape).course(1).stretches().get(0);
    assertThat(cut.from().inches() - past.from().inches()).isCloseTo(12, within(1e-9));
    assertThat(past.to().inches() - cut.to().inches()).isCloseTo(12, within(1e-9));
  }

  @Test
  void a_run_that_ends_exactly_on_a_joint_needs_no_other_piece() {
    Shape shape =
        new Shape.Triangle(Laid.in("9'"), Laid.in("105\""), java.util.Optional.of(Length.ZERO));
    CoursePlan plan = Laid.plan(Laid.STRIP, Laid.begun(Laid.FLUSH, "36\""), shape);
    assertThat(plan.course(7).stretches().get(0).to().inches())
        .as(
            "by hand: a third of the way up, two thirds of 108 are 72 in, though a third is no decimal")
        .isEqualTo(72);
    assertThat(plan.course(7).stretches().get(0).joints())
        .as("two whole strips, one joint")
        .hasSize(1);
  }

  @Test
  void an_opening_breaks_the_courses_it_reaches_through() {
    Shape shape = new Shape.Rectangle(Laid.in("30'"), Laid.in("10'"));
    CoursePlan plan = Laid.roof(
            Laid.STRIP,
            Laid.begun(Laid.FLUSH, "36\""),
            Laid.plane("A", shape)
                .with(squaresheet.roof.PlaneNotes.OpeningNotes.of(
                        "C1",
                        squaresheet.roof.Opening.Kind.CHIMNEY,
                        Laid.in("72\""),
                        Laid.in("22\""))
                    .at(Laid.in("108\""), Laid.in("30\""))))
        .plans()
        .get(0);
    assertThat(java.util.stream.IntStream.range(0, plan.courses())
            .filter(course -> plan.course(course).stretches().size() == 2))
        .as("by hand: bodies 30 to 42, 35 to 47 and 40 to 52 lie within 30 to 52")
        .containsExactly(6, 7, 8);
    assertThat(plan.pieces())
        .as("by hand: 21 courses of 10 strips, 3 of 3 and 5")
        .isEqualTo(new Pieces(234, 0, 0));
  }
}
