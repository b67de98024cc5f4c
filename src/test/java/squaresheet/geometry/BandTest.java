package squaresheet.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import squaresheet.units.Length;

/** Worked by hand on small whole numbers of units. */
class BandTest {

  @Test
  void a_rectangle_gives_its_width_over_every_band() {
    Outline rectangle = figure(0, 0, 10, 0, 10, 6, 0, 6);
    assertThat(over(rectangle, 1, 2)).isEqualTo("0..10");
    assertThat(over(rectangle, -5, 1)).isEqualTo("0..10");
    assertThat(over(rectangle, 5, 50)).isEqualTo("0..10");
    assertThat(over(rectangle, 6, 50)).isEmpty();
    assertThat(over(rectangle, -2, 0)).isEmpty();
  }

  @Test
  void at_a_hip_the_lower_line_governs_and_at_a_valley_the_upper() {
    Outline triangle = figure(0, 0, 9, 0, 3, 7);
    assertThat(over(triangle, 1, 2)).isEqualTo("3/7..57/7");
    Outline standing = figure(0, 7, 3, 0, 9, 7);
    assertThat(over(standing, 1, 2)).isEqualTo("15/7..33/7");
  }

  @Test
  void a_corner_within_the_band_counts() {
    Outline arrow = figure(0, 0, 10, 0, 14, 5, 10, 10, 0, 10);
    assertThat(over(arrow, 4, 6)).isEqualTo("0..14");
  }

  @Test
  void two_peaks_are_two_parts_above_their_saddle_and_one_across_it() {
    Outline peaks = figure(0, 0, 12, 0, 10, 6, 6, 2, 2, 6);
    assertThat(over(peaks, 3, 4)).isEqualTo("1..5 7..11");
    assertThat(over(peaks, 1, 4)).isEqualTo("1/3..35/3");
    assertThat(over(peaks, 2, 4)).isEqualTo("2/3..6 6..34/3");
  }

  @Test
  void a_hole_breaks_a_band_only_where_it_reaches_through() {
    Region holed =
        Region.of(figure(0, 0, 10, 0, 10, 10, 0, 10), List.of(figure(4, 2, 6, 2, 6, 5, 4, 5)));
    assertThat(show(holed.spansOver(new Length(3), new Length(4)))).isEqualTo("0..4 6..10");
    assertThat(show(holed.spansOver(new Length(2), new Length(5)))).isEqualTo("0..4 6..10");
    assertThat(show(holed.spansOver(new Length(4), new Length(6)))).isEqualTo("0..10");
    assertThat(show(holed.spansAt(Fraction.of(3)))).isEqualTo("0..4 6..10");
    assertThat(show(holed.spansAt(Fraction.of(2)))).isEqualTo("0..10");
  }

  @Test
  void a_line_meets_the_closed_figure() {
    Outline triangle = figure(0, 0, 9, 0, 3, 7);
    assertThat(show(triangle.spansAt(Fraction.of(0)))).isEqualTo("0..9");
    assertThat(show(triangle.spansAt(Fraction.of(7)))).isEqualTo("3..3");
    assertThat(show(triangle.spansAt(Fraction.of(1, 2)))).isEqualTo("3/14..60/7");
    assertThat(show(triangle.spansAt(Fraction.of(15, 2)))).isEmpty();
  }

  private static String over(Outline outline, long low, long high) {
    return show(outline.spansOver(new Length(low), new Length(high)));
  }

  private static String show(List<Span> spans) {
    return String.join(
        " ", spans.stream().map(span -> span.left() + ".." + span.right()).toList());
  }

  private static Outline figure(long... coordinates) {
    return Figures.figure(coordinates);
  }
}
