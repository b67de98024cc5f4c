package squaresheet.geometry;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.units.Length;

/** Why corners make no simple polygon. All arithmetic is exact: coordinates stay within 1 km, so products fit in a long. */
final class OutlineFault {

  /** 1 km in units of 1/320 mm: far past any roof. */
  private static final long FARTHEST = 320_000_000;

  private OutlineFault() {}

  static Optional<String> of(List<Point> corners) {
    return tooFew(corners)
        .or(() -> tooFar(corners))
        .or(() -> repeated(corners))
        .or(() -> crossing(corners))
        .or(() -> noArea(corners));
  }

  private static Optional<String> tooFew(List<Point> corners) {
    return corners.size() >= 3
        ? Optional.empty()
        : Optional.of("an outline must have 3 corners or more, but has " + corners.size());
  }

  private static Optional<String> tooFar(List<Point> corners) {
    return corners.stream()
        .filter(corner -> isFar(corner.x()) || isFar(corner.y()))
        .findFirst()
        .map(corner -> "a corner must lie within 1 km of the first, but one lies at " + corner);
  }

  private static boolean isFar(Length length) {
    return length.units() > FARTHEST || length.units() < -FARTHEST;
  }

  private static Optional<String> repeated(List<Point> corners) {
    Map<Point, Integer> seen = new HashMap<>();
    for (int corner = 0; corner < corners.size(); corner++) {
      Integer before = seen.putIfAbsent(corners.get(corner), corner);
      if (before != null) {
        return Optional.of("corners must lie apart, but corners " + (before + 1) + " and "
            + (corner + 1) + " are both at " + corners.get(corner));
      }
    }
    return Optional.empty();
  }

  private static Optional<String> crossing(List<Point> corners) {
    return Crossings.first(corners)
        .map(pair -> "sides must meet only at their corners, but sides " + (pair.one() + 1)
            + " and " + (pair.other() + 1) + " cross or touch");
  }

  private static Optional<String> noArea(List<Point> corners) {
    return doubledArea(corners) != 0
        ? Optional.empty()
        : Optional.of("an outline must enclose some area, but its corners lie on one line");
  }

  /**
   * Twice the signed area, positive counter-clockwise. Partial sums may run over a long and back again: two's complement
   * addition still ends at the true total, which is below 2^60 within the range of coordinates.
   */
  static long doubledArea(List<Point> corners) {
    long sum = 0;
    Point before = corners.get(corners.size() - 1);
    for (Point corner : corners) {
      sum += before.x().units() * corner.y().units()
          - corner.x().units() * before.y().units();
      before = corner;
    }
    return sum;
  }
}
