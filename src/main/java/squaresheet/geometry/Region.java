package squaresheet.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import squaresheet.units.Length;

/** An outline with holes in it. The holes lie inside, may touch the outline and one another, and have no area in common. */
public final class Region {

  /** Units (1/320 mm) squared in a square foot. */
  private static final double UNITS_PER_SQUARE_FOOT =
      (double) Length.of(1, 0).units() * Length.of(1, 0).units();

  private final Outline outline;
  private final List<Outline> holes;
  private final Bands bands;

  private Region(Outline outline, List<Outline> holes) {
    this.outline = outline;
    this.holes = List.copyOf(holes);
    this.bands = new Bands(
        Stream.concat(Stream.of(outline), holes.stream()).map(Outline::corners).toList());
  }

  /**
   * An outline with holes.
   *
   * @throws IllegalArgumentException if a hole reaches outside, or two holes overlap
   */
  public static Region of(Outline outline, List<Outline> holes) {
    List<Outline> before = new ArrayList<>();
    for (Outline hole : holes) {
      if (!outline.covers(hole)) {
        throw new IllegalArgumentException(
            "a hole must lie inside the outline, but reaches outside: " + hole);
      }
      if (before.stream().anyMatch(hole::overlaps)) {
        throw new IllegalArgumentException("holes must not overlap, but one does: " + hole);
      }
      before.add(hole);
    }
    return new Region(outline, holes);
  }

  /** The outer outline. */
  public Outline outline() {
    return outline;
  }

  /** The holes. */
  public List<Outline> holes() {
    return holes;
  }

  /** Twice the area, holes out, in units (1/320 mm) squared, exact. */
  public long doubledArea() {
    return outline.doubledArea()
        - holes.stream().mapToLong(Outline::doubledArea).sum();
  }

  /** The area in square feet, holes out. */
  public double squareFeet() {
    return squareFeet(doubledArea());
  }

  static double squareFeet(long doubledUnits) {
    return doubledUnits / 2.0 / UNITS_PER_SQUARE_FOOT;
  }

  /**
   * What the horizontal line at {@code y} has in common with the closed figure, from left to right. A corner that only
   * touches the line gives a span of no width; holes break the line only where it runs through their inside.
   */
  public List<Span> spansAt(Fraction y) {
    return bands.spansAt(y);
  }

  /**
   * The x-extents of the parts of this figure between {@code low} and {@code high}: the figure is cut along both lines,
   * and each connected part of what lies between gives one span, from its leftmost to its rightmost point anywhere in the
   * band. A hole breaks the band where it reaches through from bottom to top. Parts that meet only in a point are apart.
   * Spans come from left to right by their left end; those of parts that lie over one another may overlap. A band of no
   * height is {@link #spansAt}.
   *
   * @throws IllegalArgumentException if {@code high} lies below {@code low}
   */
  public List<Span> spansOver(Fraction low, Fraction high) {
    return bands.spansOver(low, high);
  }

  /** As {@link #spansOver(Fraction, Fraction)}, between lines at exact lengths. */
  public List<Span> spansOver(Length low, Length high) {
    return spansOver(Fraction.of(low), Fraction.of(high));
  }

  /** Twice the area between {@code low} and {@code high}, in units squared, exact. */
  public Fraction doubledAreaOver(Fraction low, Fraction high) {
    return bands.doubledAreaOver(low, high);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Region region
        && outline.equals(region.outline)
        && holes.equals(region.holes);
  }

  @Override
  public int hashCode() {
    return 31 * outline.hashCode() + holes.hashCode();
  }

  @Override
  public String toString() {
    return outline + (holes.isEmpty() ? "" : " without " + holes);
  }
}
