package squaresheet.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import squaresheet.units.DerivedLength;
import squaresheet.units.Length;

/**
 * A simple polygon on exact coordinates: its sides meet only at its corners. Kept counter-clockwise, from the first corner
 * given.
 *
 * <p>Range: 3 corners and up, each within 1 km of the origin both ways, so that every product of coordinates fits in a long.
 */
public final class Outline {

  private final List<Point> corners;
  private final Bands bands;

  private Outline(List<Point> corners) {
    this.corners = List.copyOf(corners);
    this.bands = new Bands(List.of(this.corners));
  }

  /**
   * The polygon with these corners, in order either way round.
   *
   * @throws IllegalArgumentException with the {@link #fault} of the corners, if they have one
   */
  public static Outline of(List<Point> corners) {
    fault(corners).ifPresent(reason -> {
      throw new IllegalArgumentException(reason);
    });
    return new Outline(isClockwise(corners) ? turned(corners) : corners);
  }

  /** The polygon with these corners, in order either way round. */
  public static Outline of(Point... corners) {
    return of(List.of(corners));
  }

  /** The rectangle with its lower left corner at the origin. */
  public static Outline rectangle(Length width, Length height) {
    return of(
        Point.ORIGIN,
        new Point(width, Length.ZERO),
        new Point(width, height),
        new Point(Length.ZERO, height));
  }

  /** Why these corners make no simple polygon, as a sentence, or nothing if they do. Corners and sides count from 1. */
  public static Optional<String> fault(List<Point> corners) {
    return OutlineFault.of(corners);
  }

  /** Whether the corners run clockwise; their sides are then kept in the opposite order, the last side first. */
  public static boolean isClockwise(List<Point> corners) {
    return OutlineFault.doubledArea(corners) < 0;
  }

  private static List<Point> turned(List<Point> corners) {
    List<Point> turned = new ArrayList<>(corners);
    Collections.reverse(turned.subList(1, turned.size()));
    return turned;
  }

  /** The corners, counter-clockwise. Side i runs from corner i to the next. */
  public List<Point> corners() {
    return corners;
  }

  /** The corner at {@code index}, counted from 0 and round again. */
  public Point corner(int index) {
    return corners.get(Math.floorMod(index, corners.size()));
  }

  /** The length of side {@code index}, counted from 0. */
  public DerivedLength side(int index) {
    return corner(index).distanceTo(corner(index + 1));
  }

  /** Twice the area in units (1/320 mm) squared, exact. */
  public long doubledArea() {
    return OutlineFault.doubledArea(corners);
  }

  /** The area in square feet. */
  public double squareFeet() {
    return Region.squareFeet(doubledArea());
  }

  /** The least x. */
  public Length left() {
    return corners.stream().map(Point::x).min(Length::compareTo).orElseThrow();
  }

  /** The greatest x. */
  public Length right() {
    return corners.stream().map(Point::x).max(Length::compareTo).orElseThrow();
  }

  /** The least y. */
  public Length bottom() {
    return corners.stream().map(Point::y).min(Length::compareTo).orElseThrow();
  }

  /** The greatest y. */
  public Length top() {
    return corners.stream().map(Point::y).max(Length::compareTo).orElseThrow();
  }

  /** The same figure further right and up. */
  public Outline movedBy(Length right, Length up) {
    return of(corners.stream().map(corner -> corner.plus(right, up)).toList());
  }

  /** The mirror image across the vertical line x = 0. */
  public Outline mirrored() {
    return of(corners.stream()
        .map(corner -> new Point(corner.x().negated(), corner.y()))
        .toList());
  }

  /** What the horizontal line at {@code y} has in common with this figure, from left to right. */
  public List<Span> spansAt(Fraction y) {
    return bands.spansAt(y);
  }

  /** As {@link Region#spansOver}, for a figure without holes. */
  public List<Span> spansOver(Fraction low, Fraction high) {
    return bands.spansOver(low, high);
  }

  /** As {@link Region#spansOver}, for a figure without holes. */
  public List<Span> spansOver(Length low, Length high) {
    return spansOver(Fraction.of(low), Fraction.of(high));
  }

  /** Whether the point lies inside or on a side. */
  public boolean contains(Point point) {
    return Shapes.covers(this, point);
  }

  /** Whether the other figure lies wholly inside; it may touch the sides. */
  public boolean covers(Outline other) {
    return Shapes.covers(this, other);
  }

  /** Whether the two have some area in common; touching is not enough. */
  public boolean overlaps(Outline other) {
    return Shapes.overlap(this, other);
  }

  /** The shortest distance from the point to the figure; 0 inside. */
  public DerivedLength distanceTo(Point point) {
    return Shapes.distance(this, point);
  }

  /** The part of this figure inside the other, its corners rounded to the nearest 1/320 mm; slivers thinner than that vanish. */
  public List<Outline> clippedTo(Outline other) {
    return Shapes.clip(this, other);
  }

  /** The numbers of the sides, from 0. */
  public IntStream sides() {
    return IntStream.range(0, corners.size());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Outline outline && corners.equals(outline.corners);
  }

  @Override
  public int hashCode() {
    return corners.hashCode();
  }

  @Override
  public String toString() {
    return corners.toString();
  }
}
