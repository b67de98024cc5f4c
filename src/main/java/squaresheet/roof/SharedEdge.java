package squaresheet.roof;

import squaresheet.units.DerivedLength;
import squaresheet.units.Length;

/**
 * An edge where two planes meet, measured on both.
 *
 * @param one the side on the plane written first
 * @param other the side on the other plane
 * @param paired how it is known that these two meet
 */
public record SharedEdge(Side one, Side other, Paired paired) {

  /** How it is known that two sides meet. */
  public enum Paired {
    /** One of the planes names the other. */
    NAMED,
    /** No other edge of their kind and length is left. */
    ONLY_MATCH,
    /** Several edges of their kind have one length; whichever meet, the totals are the same. */
    ALIKE
  }

  /** What it is. */
  public EdgeKind kind() {
    return one.kind();
  }

  /** Its length, halfway between the two measurements. */
  public DerivedLength length() {
    return one.length().plus(other.length()).times(0.5);
  }

  /** How far the two measurements are apart. */
  public DerivedLength disagreement() {
    return one.length().distanceTo(other.length());
  }

  /** Whether the two measurements agree within the tolerance. */
  public boolean agrees(Length tolerance) {
    return disagreement().compareTo(tolerance.toDerived()) <= 0;
  }

  /** Whether this is one of the two sides. */
  public boolean has(Side side) {
    return one.equals(side) || other.equals(side);
  }
}
