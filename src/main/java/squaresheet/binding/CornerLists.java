package squaresheet.binding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import squaresheet.geometry.Point;

/** The corners that stand in a table of their own, by plane. */
final class CornerLists {

  private final Map<String, List<Point>> corners = new LinkedHashMap<>();
  private final Set<String> lost = new HashSet<>();
  private final Set<String> taken = new HashSet<>();

  void add(String plane, Point corner) {
    corners.computeIfAbsent(TapedEdge.key(plane), name -> new ArrayList<>()).add(corner);
  }

  /** Notes that a corner of the plane could not be read. */
  void lose(String plane) {
    lost.add(TapedEdge.key(plane));
  }

  /** Whether a corner of the plane could not be read, so that the others are not its outline. */
  boolean isBroken(String plane) {
    return lost.contains(TapedEdge.key(plane));
  }

  /** The corners of a plane, in the order of their rows; none where it has none here. */
  List<Point> take(String plane) {
    taken.add(TapedEdge.key(plane));
    return corners.getOrDefault(TapedEdge.key(plane), List.of());
  }

  /** Whether a plane was made of the corners of that name. */
  boolean isTaken(String plane) {
    return taken.contains(TapedEdge.key(plane));
  }
}
