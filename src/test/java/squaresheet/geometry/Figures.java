package squaresheet.geometry;

import java.util.List;
import java.util.stream.IntStream;

/** Figures for tests, from plain units. */
final class Figures {

  private Figures() {}

  /** The outline with corners x, y, x, y, … in units. */
  static Outline figure(long... coordinates) {
    return Outline.of(corners(coordinates));
  }

  static List<Point> corners(long... coordinates) {
    return IntStream.range(0, coordinates.length / 2)
        .mapToObj(at -> Point.ofUnits(coordinates[2 * at], coordinates[2 * at + 1]))
        .toList();
  }
}
