package squaresheet.roof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.geometry.Point;
import squaresheet.units.Length;

/**
 * A shape as written down: the lengths as they were measured, not yet judged. x runs along the eave to the right as seen
 * from the ground, y up the slope, from the left end of the eave.
 *
 * <p>Sides go counter-clockwise from the eave: {@code bottom}, {@code right}, {@code top}, {@code left}; a triangle has no
 * top; a polygon's are {@code side 1}, {@code side 2}, … in the order of its corners, side 1 from the first to the second.
 */
public sealed interface Shape {

  /** The word for it, such as {@code rectangle}. */
  String word();

  /** The lengths by name: {@code eave}, {@code rake}, {@code ridge}, {@code height}, {@code offset}. */
  Map<String, Length> lengths();

  /** The names of the sides, in the order of the corners. */
  List<String> sideNames();

  /** What the sides are unless told otherwise, in the order of the corners. */
  List<EdgeKind> usualKinds();

  /** The corners in order, with every length across the slope (y) multiplied by {@code across} and rounded to 1/320 mm. */
  List<Point> corners(double across);

  /** The same shape with another length of this name; a polygon stays as it is. */
  default Shape with(String name, Length length) {
    Map<String, Length> changed = new HashMap<>(lengths());
    changed.put(name, length);
    return ShapeReader.shape(this, changed);
  }

  /**
   * The shape with this word and these lengths, by the names of {@link #lengths}; a finding for an unknown word, which
   * proposes the nearest, and for each missing length. Polygons are not read from lengths.
   */
  static Read<Shape> read(String word, Map<String, Length> lengths, Where where) {
    return ShapeReader.read(word, lengths, where);
  }

  /**
   * An eave and two rakes square to it.
   *
   * @param eave along the eave
   * @param rake up the slope
   */
  record Rectangle(Length eave, Length rake) implements Shape {

    @Override
    public String word() {
      return "rectangle";
    }

    @Override
    public Map<String, Length> lengths() {
      return Map.of("eave", eave, "rake", rake);
    }

    @Override
    public List<String> sideNames() {
      return ShapeParts.FOUR_SIDES;
    }

    @Override
    public List<EdgeKind> usualKinds() {
      return List.of(EdgeKind.EAVE, EdgeKind.RAKE, EdgeKind.RIDGE, EdgeKind.RAKE);
    }

    @Override
    public List<Point> corners(double across) {
      return ShapeParts.fourCorners(eave, eave, Length.ZERO, ShapeParts.across(rake, across));
    }
  }

  /**
   * An eave and a point above it, such as the end of a hip roof.
   *
   * @param eave along the eave
   * @param height from the eave square up the slope to the point
   * @param offset from the left end of the eave to below the point, along the eave; in the middle unless given
   */
  record Triangle(Length eave, Length height, Optional<Length> offset) implements Shape {

    /** A triangle with its point above the middle of the eave. */
    public Triangle(Length eave, Length height) {
      this(eave, height, Optional.empty());
    }

    @Override
    public String word() {
      return "triangle";
    }

    @Override
    public Map<String, Length> lengths() {
      return ShapeParts.with(Map.of("eave", eave, "height", height), offset);
    }

    @Override
    public List<String> sideNames() {
      return ShapeParts.THREE_SIDES;
    }

    @Override
    public List<EdgeKind> usualKinds() {
      return List.of(EdgeKind.EAVE, EdgeKind.HIP, EdgeKind.HIP);
    }

    @Override
    public List<Point> corners(double across) {
      Length apex = offset.orElse(ShapeParts.half(eave));
      return List.of(
          Point.ORIGIN,
          new Point(eave, Length.ZERO),
          new Point(apex, ShapeParts.across(height, across)));
    }
  }

  /**
   * An eave and a ridge along it, of other length; the ridge may be the longer, as between two valleys.
   *
   * @param eave along the eave
   * @param ridge along the top
   * @param height from the eave square up the slope to the ridge
   * @param offset from the left end of the eave to below the left end of the ridge, along the eave, negative where the ridge
   *     begins further left; the ridge stands in the middle unless given
   */
  record Trapezoid(Length eave, Length ridge, Length height, Optional<Length> offset)
      implements Shape {

    /** A trapezoid with its ridge above the middle of the eave. */
    public Trapezoid(Length eave, Length ridge, Length height) {
      this(eave, ridge, height, Optional.empty());
    }

    @Override
    public String word() {
      return "trapezoid";
    }

    @Override
    public Map<String, Length> lengths() {
      return ShapeParts.with(Map.of("eave", eave, "ridge", ridge, "height", height), offset);
    }

    @Override
    public List<String> sideNames() {
      return ShapeParts.FOUR_SIDES;
    }

    /** A side is a hip where it leans in, a valley where it leans out, a rake where it stands square. */
    @Override
    public List<EdgeKind> usualKinds() {
      Length left = start();
      Length right = eave.minus(left.plus(ridge));
      return List.of(
          EdgeKind.EAVE, ShapeParts.leaning(right), EdgeKind.RIDGE, ShapeParts.leaning(left));
    }

    @Override
    public List<Point> corners(double across) {
      return ShapeParts.fourCorners(eave, ridge, start(), ShapeParts.across(height, across));
    }

    private Length start() {
      return offset.orElse(ShapeParts.half(eave.minus(ridge)));
    }
  }

  /**
   * An eave and a ridge of one length, shifted along.
   *
   * @param eave along the eave
   * @param height from the eave square up the slope to the ridge
   * @param offset from the left end of the eave to below the left end of the ridge, along the eave, negative to the left
   */
  record Parallelogram(Length eave, Length height, Length offset) implements Shape {

    @Override
    public String word() {
      return "parallelogram";
    }

    @Override
    public Map<String, Length> lengths() {
      return Map.of("eave", eave, "height", height, "offset", offset);
    }

    @Override
    public List<String> sideNames() {
      return ShapeParts.FOUR_SIDES;
    }

    /** The side that leans in is a hip, the one that leans out a valley. */
    @Override
    public List<EdgeKind> usualKinds() {
      return List.of(
          EdgeKind.EAVE,
          ShapeParts.leaning(offset.negated()),
          EdgeKind.RIDGE,
          ShapeParts.leaning(offset));
    }

    @Override
    public List<Point> corners(double across) {
      return ShapeParts.fourCorners(eave, eave, offset, ShapeParts.across(height, across));
    }
  }

  /**
   * A free shape by its corners, in order either way round.
   *
   * @param corners x along the eave, y up the slope
   */
  record Polygon(List<Point> corners) implements Shape {

    public Polygon {
      corners = List.copyOf(corners);
    }

    @Override
    public String word() {
      return "polygon";
    }

    @Override
    public Map<String, Length> lengths() {
      return Map.of();
    }

    @Override
    public List<String> sideNames() {
      return ShapeParts.numbered(corners.size());
    }

    /** A level side at the bottom is an eave, one at the top a ridge; all others are open until told. */
    @Override
    public List<EdgeKind> usualKinds() {
      return ShapeParts.levelKinds(corners);
    }

    @Override
    public List<Point> corners(double across) {
      return corners.stream()
          .map(corner -> new Point(corner.x(), ShapeParts.across(corner.y(), across)))
          .toList();
    }
  }
}
