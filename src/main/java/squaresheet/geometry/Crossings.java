package squaresheet.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Where sides meet that should not. Exact. */
final class Crossings {

  private Crossings() {}

  /**
   * Two sides.
   *
   * @param one the earlier, counted from 0
   * @param other the later
   */
  record Pair(int one, int other) {}

  /** The first two sides, in order, that meet anywhere but at a corner they share. */
  static Optional<Pair> first(List<Point> corners) {
    int[] byLeft = IntStream.range(0, corners.size())
        .boxed()
        .sorted(Comparator.comparingLong(side -> left(corners, side)))
        .mapToInt(Integer::intValue)
        .toArray();
    List<Pair> met = new ArrayList<>();
    for (int at = 0; at < byLeft.length; at++) {
      addThoseMet(corners, byLeft, at, met);
    }
    return met.stream().min(Comparator.comparingInt(Pair::one).thenComparingInt(Pair::other));
  }

  /** Adds the sides that begin, from the left, before this one ends, and meet it. */
  private static void addThoseMet(List<Point> corners, int[] byLeft, int at, List<Pair> met) {
    int side = byLeft[at];
    long right = Math.max(x(corners, side), x(corners, side + 1));
    for (int after = at + 1; after < byLeft.length; after++) {
      int other = byLeft[after];
      if (left(corners, other) > right) {
        return;
      }
      if (isBeside(corners, side, other)
          && meet(corners, Math.min(side, other), Math.max(side, other))) {
        met.add(new Pair(Math.min(side, other), Math.max(side, other)));
      }
    }
  }

  /** Whether the two have some height in common, without which they cannot meet. */
  private static boolean isBeside(List<Point> corners, int side, int other) {
    return Math.max(y(corners, side), y(corners, side + 1))
            >= Math.min(y(corners, other), y(corners, other + 1))
        && Math.max(y(corners, other), y(corners, other + 1))
            >= Math.min(y(corners, side), y(corners, side + 1));
  }

  private static long left(List<Point> corners, int side) {
    return Math.min(x(corners, side), x(corners, side + 1));
  }

  private static long x(List<Point> corners, int corner) {
    return corners.get(corner % corners.size()).x().units();
  }

  private static long y(List<Point> corners, int corner) {
    return corners.get(corner % corners.size()).y().units();
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
