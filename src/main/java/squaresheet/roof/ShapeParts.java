package squaresheet.roof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import squaresheet.geometry.Point;
import squaresheet.units.Length;

/** What the shapes have in common. */
final class ShapeParts {

  static final List<String> FOUR_SIDES = List.of("bottom", "right", "top", "left");
  static final List<String> THREE_SIDES = List.of("bottom", "right", "left");

  private ShapeParts() {}

  static List<String> numbered(int sides) {
    return IntStream.rangeClosed(1, sides).mapToObj(number -> "side " + number).toList();
  }

  /** A length across the slope; rounded once, here, to the nearest 1/320 mm. */
  static Length across(Length length, double factor) {
    return factor == 1 ? length : length.toDerived().times(factor).nearest();
  }

  /** Half a length; an odd 1/320 mm goes to the right. */
  static Length half(Length length) {
    return new Length(Math.floorDiv(length.units(), 2L));
  }

  static List<Point> fourCorners(Length eave, Length ridge, Length start, Length height) {
    return List.of(
        Point.ORIGIN,
        new Point(eave, Length.ZERO),
        new Point(start.plus(ridge), height),
        new Point(start, height));
  }

  /** The usual kind of a side whose upper end lies so far in from its lower one. */
  static EdgeKind leaning(Length inward) {
    return inward.isZero() ? EdgeKind.RAKE : inward.isPositive() ? EdgeKind.HIP : EdgeKind.VALLEY;
  }

  static Map<String, Length> with(Map<String, Length> lengths, Optional<Length> offset) {
    Map<String, Length> all = new HashMap<>(lengths);
    offset.ifPresent(length -> all.put("offset", length));
    return Map.copyOf(all);
  }

  static List<EdgeKind> levelKinds(List<Point> corners) {
    Length low = corners.stream().map(Point::y).min(Length::compareTo).orElse(Length.ZERO);
    Length high = corners.stream().map(Point::y).max(Length::compareTo).orElse(Length.ZERO);
    List<EdgeKind> kinds = new ArrayList<>();
    for (int corner = 0; corner < corners.size(); corner++) {
      Length from = corners.get(corner).y();
      Length to = corners.get((corner + 1) % corners.size()).y();
      boolean level = from.equals(to);
      kinds.add(
          level && from.equals(low)
              ? EdgeKind.EAVE
              : level && from.equals(high) ? EdgeKind.RIDGE : EdgeKind.OPEN);
    }
    return kinds;
  }
}
