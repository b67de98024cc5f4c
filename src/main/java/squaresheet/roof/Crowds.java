package squaresheet.roof;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import squaresheet.units.Length;

/** Sides of one kind and one length, of which it does not matter for the totals which two are one edge. */
final class Crowds {

  /**
   * Two sides of different planes.
   *
   * @param one one of them
   * @param other the other
   */
  record Couple(Side one, Side other) {}

  private Crowds() {}

  /** The sides by kind, and by lengths no two of which are further apart than the tolerance. */
  static List<List<Side>> of(Collection<Side> sides, Length tolerance) {
    List<List<Side>> crowds = new ArrayList<>();
    List<Side> byLength = sides.stream()
        .sorted(Comparator.comparing(Side::kind).thenComparing(Side::length))
        .toList();
    for (Side side : byLength) {
      List<Side> last = crowds.isEmpty() ? List.of() : crowds.get(crowds.size() - 1);
      if (last.isEmpty() || !belongs(side, last.get(0), tolerance)) {
        crowds.add(new ArrayList<>());
      }
      crowds.get(crowds.size() - 1).add(side);
    }
    return crowds;
  }

  private static boolean belongs(Side side, Side shortest, Length tolerance) {
    return side.kind() == shortest.kind()
        && side.length().distanceTo(shortest.length()).compareTo(tolerance.toDerived()) <= 0;
  }

  /** Couples from different planes, those with most sides first, so that as few as can be stay alone. */
  static List<Couple> couples(List<Side> crowd) {
    Map<String, Deque<Side>> byPlane = new LinkedHashMap<>();
    crowd.forEach(
        side -> byPlane.computeIfAbsent(side.plane(), id -> new ArrayDeque<>()).add(side));
    PriorityQueue<Deque<Side>> planes =
        new PriorityQueue<>(Comparator.comparing((Deque<Side> left) -> -left.size())
            .thenComparing(left -> left.peek().plane()));
    planes.addAll(byPlane.values());
    List<Couple> couples = new ArrayList<>();
    while (planes.size() > 1) {
      Deque<Side> one = planes.poll();
      Deque<Side> other = planes.poll();
      couples.add(new Couple(one.poll(), other.poll()));
      List.of(one, other).stream().filter(left -> !left.isEmpty()).forEach(planes::add);
    }
    return couples;
  }
}
