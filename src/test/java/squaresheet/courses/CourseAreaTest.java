package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.product.Shingle;
import squaresheet.roof.Shape;
import squaresheet.units.Length;

class CourseAreaTest {

  /** Σ base·(1 − k/n)·E over n courses of height E is half base × height, and half a course of the base more. */
  @Property(tries = 100)
  void courses_of_a_triangle_cover_it_and_half_a_course_of_its_base(
      @ForAll @IntRange(min = 1, max = 60) int courses,
      @ForAll @IntRange(min = 12, max = 900) int base) {
    Length eave = Length.ofInches(base);
    Length height = Laid.STRIP.exposure().times(courses);
    CoursePlan plan = Laid.plan(Laid.STRIP, Laid.FLUSH, new Shape.Triangle(eave, height));
    double covered = covered(plan);
    double area = plan.plane().slopedArea().squareFeet() * 144;
    assertThat(covered).isCloseTo(area + base * 5 / 2.0, within(1e-6));
  }

  @Property(tries = 100)
  void courses_of_a_rectangle_cover_it_exactly(
      @ForAll @IntRange(min = 1, max = 60) int courses,
      @ForAll @IntRange(min = 12, max = 900) int base) {
    Shape shape =
        new Shape.Rectangle(Length.ofInches(base), Laid.STRIP.exposure().times(courses));
    CoursePlan plan = Laid.plan(Laid.STRIP, Laid.FLUSH, shape);
    assertThat(covered(plan)).isCloseTo(plan.plane().slopedArea().squareFeet() * 144, within(1e-6));
  }

  private static double covered(CoursePlan plan) {
    return IntStream.range(0, plan.courses())
            .mapToObj(plan::course)
            .flatMap(course -> course.stretches().stream())
            .mapToDouble(stretch -> stretch.to().inches() - stretch.from().inches())
            .sum()
        * plan.shingle().exposure().toInches();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # id      | exposure | width | wide | high | published | source
        MF-PT-N4-4 | 4"    | 4"    | 10'  | 10'  | 900       | The Building Trades Pocketbook, c. 1900, table for estimating shingles
        MF-PT-N4-6 | 4"    | 6"    | 10'  | 10'  | 600       | The Building Trades Pocketbook, c. 1900, table for estimating shingles
        MF-PT-N5-6 | 5"    | 6"    | 10'  | 10'  | 480       | The Building Trades Pocketbook, c. 1900, table for estimating shingles
        MF-PT-N6-4 | 6"    | 4"    | 10'  | 10'  | 600       | The Building Trades Pocketbook, c. 1900, table for estimating shingles
        MF-PT-N6-6 | 6"    | 6"    | 10'  | 10'  | 400       | The Building Trades Pocketbook, c. 1900, table for estimating shingles
        MF-PT-N8-6 | 8"    | 6"    | 10'  | 10'  | 300       | The Building Trades Pocketbook, c. 1900, table for estimating shingles
      """)
  void a_square_that_comes_out_even_takes_the_published_number(
      String id,
      Length exposure,
      Length width,
      Length wide,
      Length high,
      long published,
      String source) {
    Shingle wood =
        Laid.shingle(width.toString(), exposure.times(3).toString(), exposure.toString(), "1\"");
    CoursePlan plan =
        Laid.plan(wood, Laid.begun(Laid.FLUSH, width.toString()), new Shape.Rectangle(wide, high));
    assertThat(plan.pieces()).as(id + ", " + source).isEqualTo(new Pieces(published, 0, 0));
    assertThat(plan.waste().isZero()).isTrue();
  }

  /** Ten times as many pieces in as many courses: what is kept and made along the way hardly grows. */
  @Test
  void memory_does_not_grow_with_pieces() {
    long narrow = allocated(Length.of(300, 0));
    long wide = allocated(Length.of(3000, 0));
    assertThat(wide).isLessThan(2 * narrow);
  }

  private static long allocated(Length eave) {
    Shape shape = new Shape.Triangle(eave, Length.of(40, 0), Optional.of(Length.of(31, 0)));
    Laid.plan(Laid.METRIC, LayoutSettings.standard(), shape).pieces();
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    Laid.plan(Laid.METRIC, LayoutSettings.standard(), shape).pieces();
    return threads.getCurrentThreadAllocatedBytes() - before;
  }
}
