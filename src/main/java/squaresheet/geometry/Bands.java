package squaresheet.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What horizontal lines and bands cut out of a set of rings, by the even-odd rule. Exact. */
final class Bands {

  private static final Comparator<Span> LEFT_TO_RIGHT =
      Comparator.comparing(Span::left).thenComparing(Span::right);

  /** The sides that are not level, by their lower ends. */
  private final Edge[] edges;
  /** The highest upper end among the edges up to each. */
  private final long[] reach;

  Bands(List<List<Point>> rings) {
    edges = rings.stream()
        .flatMap(Bands::sides)
        .filter(edge -> !edge.isLevel())
        .sorted(Comparator.comparingLong(Edge::lowY))
        .toArray(Edge[]::new);
    reach = new long[edges.length];
    long highest = Long.MIN_VALUE;
    for (int index = 0; index < edges.length; index++) {
      highest = Math.max(highest, edges[index].highY());
      reach[index] = highest;
    }
  }

  private static Stream<Edge> sides(List<Point> ring) {
    List<Edge> sides = new ArrayList<>();
    Point before = ring.get(ring.size() - 1);
    for (Point corner : ring) {
      sides.add(Edge.between(before, corner));
      before = corner;
    }
    return sides.stream();
  }

  List<Span> spansOver(Fraction low, Fraction high) {
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException(
          "a band must run upward, but runs from " + low + " to " + high);
    }
    return low.equals(high) ? spansAt(low) : new Parts(slabs(low, high)).spans();
  }

  Fraction doubledAreaOver(Fraction low, Fraction high) {
    return slabs(low, high).stream()
        .flatMap(List::stream)
        .map(Trapezoid::doubledArea)
        .reduce(Fraction.of(0), Fraction::plus);
  }

  /** The closed figure at {@code y}: its sections just below and just above, joined where they touch. */
  List<Span> spansAt(Fraction y) {
    List<Edge> touched = Arrays.stream(edges).filter(edge -> edge.spans(y, y)).toList();
    List<Span> sections = new ArrayList<>();
    sections.addAll(section(touched.stream().filter(edge -> isAbove(edge, y)).toList(), y));
    sections.addAll(section(touched.stream().filter(edge -> isBelow(edge, y)).toList(), y));
    return joined(sections);
  }

  private static boolean isAbove(Edge edge, Fraction y) {
    return Fraction.of(edge.highY()).compareTo(y) > 0;
  }

  private static boolean isBelow(Edge edge, Fraction y) {
    return Fraction.of(edge.lowY()).compareTo(y) < 0;
  }

  private static List<Span> section(List<Edge> crossed, Fraction y) {
    List<Fraction> places = crossed.stream().map(edge -> edge.xAt(y)).sorted().toList();
    List<Span> spans = new ArrayList<>();
    for (int index = 0; index + 1 < places.size(); index += 2) {
      spans.add(new Span(places.get(index), places.get(index + 1)));
    }
    return spans;
  }

  private static List<Span> joined(List<Span> spans) {
    List<Span> joined = new ArrayList<>();
    for (Span span : spans.stream().sorted(LEFT_TO_RIGHT).toList()) {
      int last = joined.size() - 1;
      if (last >= 0 && joined.get(last).touches(span)) {
        joined.set(last, joined.get(last).around(span));
      } else {
        joined.add(span);
      }
    }
    return joined;
  }

  /** The band cut into slabs at every corner's height, each slab into trapezoids from left to right. */
  private List<List<Trapezoid>> slabs(Fraction low, Fraction high) {
    List<Edge> inBand = edgesIn(low, high);
    List<Fraction> heights = heights(inBand, low, high);
    Sweep sweep = new Sweep(inBand, low);
    return heights.stream().skip(1).map(sweep::slabUpTo).toList();
  }

  private List<Edge> edgesIn(Fraction low, Fraction high) {
    List<Edge> inBand = new ArrayList<>();
    long floor = low.floor();
    long ceiling = high.ceiling();
    for (int index = firstReaching(floor); index < edges.length; index++) {
      if (edges[index].lowY() >= ceiling) {
        break;
      }
      if (edges[index].highY() > floor) {
        inBand.add(edges[index]);
      }
    }
    return inBand;
  }

  private int firstReaching(long floor) {
    int found = Arrays.binarySearch(reach, floor + 1);
    if (found < 0) {
      return -found - 1;
    }
    while (found > 0 && reach[found - 1] == floor + 1) {
      found--;
    }
    return found;
  }

  private static List<Fraction> heights(List<Edge> inBand, Fraction low, Fraction high) {
    TreeSet<Long> corners = new TreeSet<>();
    for (Edge edge : inBand) {
      corners.add(edge.lowY());
      corners.add(edge.highY());
    }
    List<Fraction> heights = new ArrayList<>();
    heights.add(low);
    corners.subSet(low.floor() + 1, high.ceiling()).forEach(y -> heights.add(Fraction.of(y)));
    heights.add(high);
    return heights;
  }
}
