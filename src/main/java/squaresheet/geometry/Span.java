package squaresheet.geometry;

import squaresheet.units.DerivedLength;

/**
 * A stretch along x with exact ends, in units of 1/320 mm.
 *
 * @param left the left end
 * @param right the right end, not left of the left end
 */
public record Span(Fraction left, Fraction right) {

  public Span {
    if (left.compareTo(right) > 0) {
      throw new IllegalArgumentException(
          "a span must run to the right, but runs from " + left + " to " + right);
    }
  }

  /** How far it reaches, exact, in units. */
  public Fraction width() {
    return right.minus(left);
  }

  /** How far it reaches. */
  public DerivedLength length() {
    return width().toLength();
  }

  /** The stretch from the leftmost to the rightmost end of both. */
  public Span around(Span other) {
    return new Span(left.min(other.left), right.max(other.right));
  }

  /** Whether the two share more than an end. */
  public boolean overlaps(Span other) {
    return left.max(other.left).compareTo(right.min(other.right)) < 0;
  }

  /** Whether the two share at least an end. */
  public boolean touches(Span other) {
    return left.max(other.left).compareTo(right.min(other.right)) <= 0;
  }
}
