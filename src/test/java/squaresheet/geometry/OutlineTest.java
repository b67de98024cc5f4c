package squaresheet.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static squaresheet.geometry.Figures.corners;
import static squaresheet.geometry.Figures.figure;

import java.util.List;
import org.junit.jupiter.api.Test;
import squaresheet.units.Length;

class OutlineTest {

  @Test
  void corners_are_kept_counter_clockwise_from_the_first() {
    assertThat(figure(0, 0, 0, 5, 5, 5).corners()).isEqualTo(corners(0, 0, 5, 5, 0, 5));
    assertThat(figure(0, 0, 5, 5, 0, 5).corners()).isEqualTo(corners(0, 0, 5, 5, 0, 5));
  }

  @Test
  void a_fault_is_a_sentence() {
    assertThat(fault(0, 0, 1, 1)).isEqualTo("an outline must have 3 corners or more, but has 2");
    assertThat(fault(0, 0, 9, 0, 9, 9, 9, 0))
        .isEqualTo("corners must lie apart, but corners 2 and 4 are both at (0.028125 mm, 0\")");
    assertThat(fault(0, 0, 9, 9, 9, 0, 0, 9))
        .isEqualTo("sides must meet only at their corners, but sides 1 and 3 cross or touch");
    assertThat(fault(0, 0, 9, 0, 4, 0))
        .as("a fold straight back")
        .isEqualTo("sides must meet only at their corners, but sides 1 and 2 cross or touch");
    assertThat(fault(0, 0, 9, 0, 9, 9, 4, 0))
        .as("a corner on another side")
        .isEqualTo("sides must meet only at their corners, but sides 1 and 3 cross or touch");
    assertThat(fault(0, 0, 320_000_001, 0, 0, 9))
        .isEqualTo("a corner must lie within 1 km of the first, but one lies at"
            + " (1000000.003125 mm, 0\")");
    assertThatThrownBy(() -> figure(0, 0, 1, 1))
        .hasMessage("an outline must have 3 corners or more, but has 2");
  }

  @Test
  void a_corner_may_lie_within_a_straight_side() {
    assertThat(figure(0, 0, 4, 0, 9, 0, 9, 9).corners()).hasSize(4);
  }

  @Test
  void the_largest_area_fits() {
    long far = 320_000_000;
    Outline largest = figure(-far, -far, far, -far, far, far, -far, far);
    assertThat(largest.doubledArea()).as("2 x (2 km)^2").isEqualTo(2 * (2 * far) * (2 * far));
  }

  @Test
  void a_square_foot_is_a_square_foot() {
    assertThat(Outline.rectangle(Length.of(1, 0), Length.of(1, 0)).squareFeet()).isEqualTo(1);
  }

  @Test
  void holes_lie_inside_and_apart() {
    Outline outer = figure(0, 0, 10, 0, 10, 10, 0, 10);
    Outline hole = figure(0, 2, 5, 2, 5, 5, 0, 5);
    assertThat(Region.of(outer, List.of(hole)).doubledArea()).isEqualTo(2 * (100 - 15));
    assertThatThrownBy(() -> Region.of(outer, List.of(hole.movedBy(new Length(-1), Length.ZERO))))
        .hasMessageStartingWith("a hole must lie inside the outline, but reaches outside: ");
    assertThatThrownBy(
            () -> Region.of(outer, List.of(hole, hole.movedBy(new Length(4), Length.ZERO))))
        .hasMessageStartingWith("holes must not overlap, but one does: ");
    assertThat(Region.of(outer, List.of(hole, hole.movedBy(new Length(5), Length.ZERO)))
            .holes())
        .as("they may touch")
        .hasSize(2);
  }

  @Test
  void a_point_is_near_or_in() {
    Outline square = figure(0, 0, 8128, 0, 8128, 8128, 0, 8128);
    assertThat(square.contains(Point.ofUnits(8128, 4))).isTrue();
    assertThat(square.contains(Point.ofUnits(8129, 4))).isFalse();
    assertThat(square.distanceTo(Point.ofUnits(4 * 8128, 5 * 8128)).inches()).isEqualTo(5);
    assertThat(square.distanceTo(Point.ofUnits(4, 4)).inches()).isZero();
  }

  @Test
  void a_clip_is_what_both_cover() {
    Outline square = figure(0, 0, 10, 0, 10, 10, 0, 10);
    Outline comb = figure(-5, -5, 15, -5, 15, 5, 8, 5, 8, -2, 2, -2, 2, 5, -5, 5);
    assertThat(square.clippedTo(comb)).hasSize(2);
    assertThat(square.clippedTo(comb).stream().mapToLong(Outline::doubledArea).sum())
        .as("two pieces of 2 by 5")
        .isEqualTo(2 * 20);
    assertThat(square.clippedTo(square.movedBy(new Length(10), Length.ZERO))).isEmpty();
  }

  private static String fault(long... coordinates) {
    return Outline.fault(corners(coordinates)).orElse("");
  }
}
