package squaresheet.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The connected parts of a stack of slabs: pieces belong together where they stand on one another with some width. */
final class Parts {

  private static final Comparator<Span> LEFT_TO_RIGHT =
      Comparator.comparing(Span::left).thenComparing(Span::right);

  private final List<Trapezoid> pieces = new ArrayList<>();
  /** For each piece another of its part, or itself. */
  private final List<Integer> parents = new ArrayList<>();

  Parts(List<List<Trapezoid>> slabs) {
    int below = 0;
    for (List<Trapezoid> slab : slabs) {
      int first = pieces.size();
      slab.forEach(this::add);
      join(below, first);
      below = first;
    }
  }

  private void add(Trapezoid piece) {
    parents.add(pieces.size());
    pieces.add(piece);
  }

  /** Joins the pieces from {@code below} to {@code first} to those from {@code first} on, both from left to right. */
  private void join(int below, int first) {
    int lower = below;
    int upper = first;
    while (lower < first && upper < pieces.size()) {
      Span top = pieces.get(lower).top();
      Span bottom = pieces.get(upper).bottom();
      if (top.overlaps(bottom)) {
        parents.set(root(upper), root(lower));
      }
      if (top.right().compareTo(bottom.right()) <= 0) {
        lower++;
      } else {
        upper++;
      }
    }
  }

  private int root(int piece) {
    int root = piece;
    while (parents.get(root) != root) {
      parents.set(root, parents.get(parents.get(root)));
      root = parents.get(root);
    }
    return root;
  }

  List<Span> spans() {
    Map<Integer, Span> byPart = new TreeMap<>();
    for (int piece = 0; piece < pieces.size(); piece++) {
      byPart.merge(root(piece), pieces.get(piece).extent(), Span::around);
    }
    return byPart.values().stream().sorted(LEFT_TO_RIGHT).toList();
  }
}
