package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

class LinesTest {

  /** Metric-size laminated shingle and its starter; common practice, no source. */
  private static final Length HEIGHT = Length.parse("13 1/4\"");

  private static final Length EXPOSURE = Length.parse("5 5/8\"");
  private static final Length STARTER = Length.parse("7 3/4\"");
  private static final Length OVERHANG = Length.parse("3/4\"");

  @Test
  void the_starter_line_and_the_first_course_line_are_those_of_common_practice() {
    Lines lines = lines(Interval.exact(2, EXPOSURE), "10'");
    assertThat(lines.starterLine())
        .as("common practice, no source: 7 3/4 less 3/4")
        .hasToString("7\"");
    assertThat(lines.firstCourse())
        .as("common practice, no source: 13 1/4 less 3/4")
        .hasToString("1' 0 1/2\"");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # every | exact    | up       | marks                        | source
        2     | 11 1/4"  | 5'       | 11", 22", 33", 44"           | common practice, no source
        5     | 2' 4 1/8"| 15' 6"   | 28", 56", 84", 112", 140", 168" | common practice, no source
      """)
  void marks_rounded_down_to_the_inch_are_those_of_common_practice(
      int every, Length exact, String up, String marks, String source) {
    Interval interval = Interval.of(every, EXPOSURE, Graduation.INCH);
    assertThat(interval.full()).as(source).isEqualTo(exact);
    assertThat(lines(interval, up).marks().get(0).show(Graduation.SIXTEENTH))
        .as(source)
        .isEqualTo(marks);
  }

  @Test
  void five_courses_laid_at_28_inches_show_5_6_inches_each() {
    Interval interval = Interval.of(5, EXPOSURE, Graduation.INCH);
    assertThat(interval.exposureLaid().inches())
        .as("common practice, no source: 28 over 5")
        .isCloseTo(5.6, within(1e-12));
    assertThat(interval.lostPerLine()).as("28 1/8 less 28").hasToString("1/8\"");
  }

  @Test
  void a_distance_that_would_stretch_the_exposure_is_refused_with_the_reason() {
    assertThatThrownBy(() -> new Interval(5, EXPOSURE, Length.parse("28 1/4\"")))
        .hasMessage(
            "lines every 5 courses may stand at most 2' 4 1/8\" apart, but 2' 4 1/4\" apart stretches the exposure to"
                + " 5.650 in, past the product's 5 5/8\"");
    assertThat(new Interval(5, EXPOSURE, Length.parse("28 1/8\"")).isFull())
        .as("the limit itself is allowed")
        .isTrue();
  }

  @Test
  void a_millimetre_tape_rounds_an_inch_product_down_to_the_millimetre() {
    Interval interval = Interval.of(5, EXPOSURE, Graduation.MILLIMETRE);
    assertThat(interval.laid()).as("28 1/8 in is 714.375 mm").hasToString("714 mm");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # covered | every | laid     | courses | fewest | last    | source
        180"    | 5     | 28"      | 33      | 32     | 0.8     | by hand: 180/5.6 = 32.14; 180/5.625 = 32; 180 - 32*5.6
        168"    | 5     | 28"      | 30      | 30     | 5.6     | by hand: 168/5.6 = 30 exactly; 168/5.625 = 29.87
        168"    | 5     | 28 1/8"  | 30      | 30     | 4.875   | by hand: 168 - 29*5.625
        5 5/8"  | 1     | 5 5/8"   | 1       | 1      | 5.625   | one course exactly
        3"      | 1     | 5 5/8"   | 1       | 1      | 3       | lower than one course: still one
      """)
  void the_last_course_is_what_is_left(
      Length covered, int every, Length laid, int courses, int fewest, double last, String source) {
    Reach reach = new Reach(covered, new Interval(every, EXPOSURE, laid));
    assertThat(reach.courses()).as(source).isEqualTo(courses);
    assertThat(reach.fewest()).as(source).isEqualTo(fewest);
    assertThat(reach.extra()).as(source).isEqualTo(courses - fewest);
    assertThat(reach.lastCourse().inches()).as(source).isCloseTo(last, within(1e-9));
  }

  @Test
  void the_even_exposure_ends_on_a_full_last_course_and_never_passes_the_product() {
    Reach reach = new Reach(Length.parse("168\""), Interval.exact(5, EXPOSURE));
    assertThat(reach.evenExposure().inches())
        .as("by hand: 168 over 30")
        .isCloseTo(5.6, within(1e-12));
    assertThat(reach.evenMarks(Graduation.SIXTEENTH))
        .as("by hand: every 5 of 5.6 is 28")
        .extracting(Length::toInches)
        .containsExactly(28.0, 56.0, 84.0, 112.0, 140.0);
  }

  @Test
  void the_difference_between_two_rakes_is_spread_over_all_lines() {
    Lines lines = Lines.of(
        HEIGHT,
        STARTER,
        OVERHANG,
        new Interval(2, EXPOSURE, Length.parse("11\"")),
        Graduation.SIXTEENTH,
        List.of(
            new Lines.Station("left rake", Length.parse("122 1/2\"")),
            new Lines.Station("right rake", Length.parse("120 1/4\""))));
    assertThat(lines.marks().get(0).at().get(0)).hasToString("11\"");
    assertThat(lines.marks().get(1).at())
        .as("by hand: 107.75/110 of 11 is 10.775, of 22 is 21.55; down to the 1/16")
        .startsWith(Length.parse("10 3/4\""), Length.parse("21 1/2\""));
    assertThat(lines.marks().get(0).at()).hasSameSizeAs(lines.marks().get(1).at());
    assertThat(lines.taperPerLine().inches())
        .as("by hand: 2.25 over 110, times 11")
        .isCloseTo(0.225, within(1e-12));
  }

  @Test
  void a_station_lower_than_the_first_course_has_no_marks() {
    assertThat(lines(Interval.exact(1, EXPOSURE), "1'").marks().get(0).at()).isEmpty();
  }

  private static Lines lines(Interval interval, String up) {
    return Lines.of(
        HEIGHT,
        STARTER,
        OVERHANG,
        interval,
        Graduation.SIXTEENTH,
        List.of(new Lines.Station("left rake", Length.parse(up))));
  }
}
