package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

class LinesLawsTest {

  @Property(tries = 300)
  void no_two_marks_stand_further_apart_than_the_product_allows(
      @ForAll @LongRange(min = 20_000, max = 80_000) long exposure,
      @ForAll @IntRange(min = 1, max = 8) int every,
      @ForAll @LongRange(min = 200_000, max = 4_000_000) long left,
      @ForAll @LongRange(min = -9_000, max = 9_000) long more,
      @ForAll Graduation tape) {
    Interval interval = Interval.exact(every, new Length(exposure));
    Lines lines = Lines.of(
        new Length(2 * exposure + 10_000),
        new Length(63_000),
        new Length(6_096),
        interval,
        tape,
        List.of(
            new Lines.Station("left rake", new Length(left)),
            new Lines.Station("right rake", new Length(left + more))));
    lines.marks().forEach(marks -> noStepExceeds(interval.full(), marks.at()));
  }

  @Property(tries = 300)
  void even_marks_never_stretch_and_never_pass_the_top(
      @ForAll @LongRange(min = 20_000, max = 80_000) long exposure,
      @ForAll @IntRange(min = 1, max = 8) int every,
      @ForAll @LongRange(min = 1, max = 4_000_000) long covered,
      @ForAll Graduation tape) {
    Reach reach = new Reach(new Length(covered), Interval.exact(every, new Length(exposure)));
    List<Length> marks = reach.evenMarks(tape);
    noStepExceeds(reach.interval().full(), marks);
    marks.forEach(mark -> assertThat(mark).isLessThan(new Length(covered)));
    assertThat(reach.evenExposure().inches()).isLessThanOrEqualTo(new Length(exposure).toInches());
  }

  @Property(tries = 500)
  void rounding_the_interval_down_never_saves_a_course(
      @ForAll @LongRange(min = 20_000, max = 80_000) long exposure,
      @ForAll @IntRange(min = 1, max = 8) int every,
      @ForAll @LongRange(min = 1, max = 4_000_000) long covered,
      @ForAll Graduation tape) {
    Reach reach = new Reach(new Length(covered), Interval.of(every, new Length(exposure), tape));
    assertThat(reach.extra()).isNotNegative();
    assertThat(reach.lastCourse().inches())
        .isPositive()
        .isLessThanOrEqualTo(reach.interval().exposureLaid().inches() + 1e-9);
  }

  private static void noStepExceeds(Length most, List<Length> marks) {
    Length below = Length.ZERO;
    for (Length mark : marks) {
      assertThat(mark.minus(below)).isLessThanOrEqualTo(most);
      below = mark;
    }
  }
}
