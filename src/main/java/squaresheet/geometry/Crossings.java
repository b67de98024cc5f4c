package squaresheet.geometry;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Where sides meet that should not. Exact. */
final class Crossings {

  private Crossings() {}

  /** The first side after {@code side} that meets it anywhere but at the corner they share. */
  static OptionalInt firstMet(List<Point> corners, int side) {
    return IntStream.range(side + 1, corners.size())
        .filter(other -> meet(corners, side, other))
        .findFirst();
  }

  private static boolean meet(List<Point> corners, int side, int other) {
    Point a = corners.get(side);
    Point b = corners.get((side + 1) % corners.size());
    Point c = corners.get(other);
    Point d = corners.get((other + 1) % corners.size());
    if (b.equals(c)) {
      return foldsBack(a, b, d);
    }
    if (d.equals(a)) {
      return foldsBack(c, d, b);
    }
    return segmentsMeet(a, b, c, d);
  }

  /** Whether the way from a over b to d turns straight back on itself. */
  private static boolean foldsBack(Point a, Point b, Point d) {
    return turn(a, b, d) == 0 && (dot(a, b, d) < 0);
  }

  private static long dot(Point a, Point b, Point d) {
    return (b.x().units() - a.x().units()) * (d.x().units() - b.x().units())
        + (b.y().units() - a.y().units()) * (d.y().units() - b.y().units());
  }

  private static boolean segmentsMeet(Point a, Point b, Point c, Point d) {
    int abc = turn(a, b, c);
    int abd = turn(a, b, d);
    int cda = turn(c, d, a);
    int cdb = turn(c, d, b);
    return (abc != abd && cda != cdb)
        || (abc == 0 && isBetween(a, b, c))
        || (abd == 0 && isBetween(a, b, d))
        || (cda == 0 && isBetween(c, d, a))
        || (cdb == 0 && isBetween(c, d, b));
  }

  /** 1 where a, b, c turn left, -1 where they turn right, 0 on one line. */
  static int turn(Point a, Point b, Point c) {
    return Long.compare(
        (b.x().units() - a.x().units()) * (c.y().units() - a.y().units()),
        (c.x().units() - a.x().units()) * (b.y().units() - a.y().units()));
  }

  private static boolean isBetween(Point a, Point b, Point onTheirLine) {
    return isBetween(a.x().units(), b.x().units(), onTheirLine.x().units())
        && isBetween(a.y().units(), b.y().units(), onTheirLine.y().units());
  }

  private static boolean isBetween(long one, long other, long value) {
    return Math.min(one, other) <= value && value <= Math.max(one, other);
  }
}
