package squaresheet.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A level line that goes up through the sides of a figure, from one corner's height to the next. */
final class Sweep {

  /** Sides do not cross, so their order on the lower line, and for those that meet there on the upper, is their order. */
  private static final Comparator<Climb> LEFT_TO_RIGHT =
      Comparator.comparing((Climb climb) -> climb.below).thenComparing(climb -> climb.above);

  /** The sides by their lower ends. */
  private final List<Edge> edges;

  private final List<Climb> climbs = new ArrayList<>();
  private int next;
  private Fraction height;

  Sweep(List<Edge> edges, Fraction start) {
    this.edges = edges;
    this.height = start;
  }

  /** The pieces from where the line stands up to {@code top}, from left to right, none of no width; no corner lies between. */
  List<Trapezoid> slabUpTo(Fraction top) {
    climbs.removeIf(climb -> isAtOrBelow(climb.edge.highY()));
    while (next < edges.size() && isAtOrBelow(edges.get(next).lowY())) {
      Edge edge = edges.get(next++);
      if (!isAtOrBelow(edge.highY())) {
        climbs.add(new Climb(edge, edge.xAt(height)));
      }
    }
    climbs.forEach(climb -> climb.above = climb.edge.xAt(top));
    climbs.sort(LEFT_TO_RIGHT);
    List<Trapezoid> pieces = pieces(top.minus(height));
    climbs.forEach(climb -> climb.below = climb.above);
    height = top;
    return pieces;
  }

  private boolean isAtOrBelow(long y) {
    return Fraction.of(y).compareTo(height) <= 0;
  }

  private List<Trapezoid> pieces(Fraction tall) {
    List<Trapezoid> pieces = new ArrayList<>();
    for (int index = 0; index + 1 < climbs.size(); index += 2) {
      Span bottom = new Span(climbs.get(index).below, climbs.get(index + 1).below);
      Span top = new Span(climbs.get(index).above, climbs.get(index + 1).above);
      if (!bottom.left().equals(bottom.right()) || !top.left().equals(top.right())) {
        pieces.add(new Trapezoid(bottom, top, tall));
      }
    }
    return pieces;
  }

  /** A side on its way up, with where it passes the lower and the upper line of the slab. */
  private static final class Climb {
    private final Edge edge;
    private Fraction below;
    private Fraction above;

    Climb(Edge edge, Fraction below) {
      this.edge = edge;
      this.below = below;
      this.above = below;
    }
  }
}
