package squaresheet.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A piece of a figure between two lines at which no side begins or ends within.
 *
 * @param bottom where it stands on the lower line
 * @param top where it meets the upper line
 * @param height from line to line, more than 0
 */
record Trapezoid(Span bottom, Span top, Fraction height) {

  private record Crossing(Fraction below, Fraction above) {}

  /** Sides do not cross, so their order on the lower line, and for those that meet there on the upper, is their order. */
  private static final Comparator<Crossing> LEFT_TO_RIGHT =
      Comparator.comparing(Crossing::below).thenComparing(Crossing::above);

  /** The pieces between two neighbouring heights, from left to right; none of no width. */
  static List<Trapezoid> slab(List<Edge> edges, Fraction low, Fraction high) {
    List<Crossing> crossings = edges.stream()
        .filter(edge -> edge.spans(low, high))
        .map(edge -> new Crossing(edge.xAt(low), edge.xAt(high)))
        .sorted(LEFT_TO_RIGHT)
        .toList();
    List<Trapezoid> pieces = new ArrayList<>();
    for (int index = 0; index + 1 < crossings.size(); index += 2) {
      Crossing left = crossings.get(index);
      Crossing right = crossings.get(index + 1);
      if (!left.equals(right)) {
        pieces.add(new Trapezoid(
            new Span(left.below, right.below), new Span(left.above, right.above), high.minus(low)));
      }
    }
    return pieces;
  }

  /** From the leftmost to the rightmost corner. */
  Span extent() {
    return bottom.around(top);
  }

  Fraction doubledArea() {
    return bottom.width().plus(top.width()).times(height);
  }
}
