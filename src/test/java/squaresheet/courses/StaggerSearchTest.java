package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import squaresheet.product.Shingle;
import squaresheet.roof.Shape;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

class StaggerSearchTest {

  /** A short piece, so that every repeat of up to four courses on inch marks can be tried. */
  private static final Shingle SHORT = Laid.shingle("12\"", "12\"", "5\"", "4\"");

  private static CoursePlan plan(Shingle shingle, LayoutSettings settings, int width) {
    Shape shape = new Shape.Rectangle(Length.ofInches(width), Laid.in("10'"));
    return Laid.plan(shingle, settings, shape);
  }

  /** Every repeat of two to four courses whose neighbours keep 4 in. */
  private static List<Stagger> everyRepeat() {
    List<List<Length>> open = new ArrayList<>(List.of(List.of()));
    List<Stagger> all = new ArrayList<>();
    for (int course = 0; course < 4; course++) {
      List<List<Length>> longer = new ArrayList<>();
      open.forEach(begun -> IntStream.rangeClosed(1, 12).forEach(cut -> {
        List<Length> one = new ArrayList<>(begun);
        one.add(Length.ofInches(cut));
        longer.add(one);
      }));
      open = longer;
      longer.stream()
          .filter(cuts -> cuts.size() > 1)
          .map(cuts -> new Stagger(Length.ofInches(12), cuts, Length.ofInches(4)))
          .filter(stagger -> stagger.violations().isEmpty())
          .forEach(all::add);
    }
    return all;
  }

  @ParameterizedTest
  @ValueSource(ints = {97, 101, 106, 110})
  void no_repeat_of_up_to_four_courses_leaves_fewer_slivers(int width) {
    CoursePlan plan = plan(SHORT, Laid.FLUSH, width);
    long fewest = everyRepeat().stream()
        .mapToLong(stagger -> plan.with(stagger).slivers())
        .min()
        .orElseThrow();
    Stagger found = plan.bestStagger(Graduation.INCH);
    assertThat(found.violations()).isEmpty();
    assertThat(plan.with(found).slivers()).as("brute force").isLessThanOrEqualTo(fewest);
  }

  @Test
  void a_repeat_that_is_no_stair_is_found_where_only_such_a_one_takes_the_fewest_shingles() {
    LayoutSettings alone =
        Laid.FLUSH.with(new LayoutSettings.Counting(LayoutSettings.Reuse.NONE, Length.ZERO, false));
    CoursePlan plan = plan(SHORT, alone, 99);
    long fewest = everyRepeat().stream()
        .filter(stagger -> plan.with(stagger).slivers() == 0)
        .mapToLong(stagger -> plan.with(stagger).pieces().used())
        .min()
        .orElseThrow();
    CoursePlan best = plan.with(plan.bestStagger(Graduation.INCH));
    assertThat(best.slivers()).isZero();
    assertThat(best.pieces().used()).as("brute force").isLessThanOrEqualTo(fewest);
  }

  @Test
  void joints_two_courses_apart_keep_the_distance_asked_for() {
    LayoutSettings settings =
        Laid.FLUSH.with(LayoutSettings.Joints.standard().withNextButOne(Length.ofInches(3)));
    Stagger found = plan(Laid.STRIP, settings, 361).bestStagger(Graduation.INCH);
    assertThat(found.nextButOneUnder(Length.ofInches(3))).isEmpty();
    assertThat(found.violations()).isEmpty();
  }

  @Test
  void first_pieces_can_be_looked_for_on_the_whole_roof_at_once() {
    LayoutSettings typed = Laid.begun(Laid.FLUSH, "36\"", "30\"", "24\"", "18\"", "12\"", "6\"");
    LayoutSettings searched = typed.with(typed.joints().searched());
    Shape one = new Shape.Rectangle(Laid.in("30' 1\""), Laid.in("10'"));
    Shape other = new Shape.Rectangle(Laid.in("20' 2\""), Laid.in("8'"));
    RoofLayout as = Laid.roof(Laid.STRIP, typed, Laid.plane("A", one), Laid.plane("B", other));
    RoofLayout best = Laid.roof(Laid.STRIP, searched, Laid.plane("A", one), Laid.plane("B", other));
    assertThat(as.slivers())
        .as("by hand: 1 in and 2 in are left on every sixth course")
        .isEqualTo(7);
    assertThat(best.slivers()).isZero();
    assertThat(best.plans()).allMatch(plan -> plan.stagger().equals(best.stagger()));
  }

  @Test
  void joints_that_line_up_two_courses_apart_are_said_where_they_must_not() {
    LayoutSettings half = Laid.begun(LayoutSettings.standard(), "36\"", "18\"");
    LayoutSettings kept = half.with(half.joints().withNextButOne(Length.ofInches(3)));
    Shape shape = new Shape.Rectangle(Laid.in("30'"), Laid.in("10'"));
    assertThat(Laid.roof(Laid.STRIP, half, Laid.plane("A", shape)).findings())
        .noneMatch(finding -> finding.info().id().equals("joints-line-up-next-but-one"));
    assertThat(Laid.roof(Laid.STRIP, kept, Laid.plane("A", shape)).findings())
        .filteredOn(finding -> finding.info().id().equals("joints-line-up-next-but-one"))
        .first()
        .satisfies(finding -> assertThat(finding.says())
            .isEqualTo(
                "joints of course 1 must be at least 3\" from those two courses up, but are 0\""));
  }
}
