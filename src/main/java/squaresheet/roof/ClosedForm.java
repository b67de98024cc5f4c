package squaresheet.roof;

import java.util.List;
import java.util.Optional;
import squaresheet.units.Area;

/**
 * A rule of geometry that the roof must satisfy, with what the model says beside what the rule makes of other values:
 * evidence, whose judging is left to others.
 *
 * @param rule the rule, a few lower-case words
 * @param item what it was asked of, such as {@code plane A, right}
 * @param relation how the two must stand to one another
 * @param model what the model says, in the unit
 * @param expected what the rule makes, in the unit
 * @param unit {@code ft} or {@code sq ft}
 * @param tolerance how far the two may be apart, in the unit
 */
public record ClosedForm(
    String rule,
    String item,
    Relation relation,
    double model,
    double expected,
    String unit,
    double tolerance) {

  /** How two values must stand to one another. */
  public enum Relation {
    /** The two are the same. */
    EQUAL,
    /** The model's is the smaller, or the same. */
    AT_MOST
  }

  /** Whether the rule is satisfied, within the tolerance. */
  public boolean holds() {
    double over = model - expected;
    return (relation == Relation.AT_MOST ? over : Math.abs(over)) <= tolerance;
  }

  /**
   * All rules that need nothing but the roof: a shared edge has one length and one rise on both its planes, a rake reaches
   * as far up as it is long, and between two hips the ridge is no longer than the eave.
   */
  public static List<ClosedForm> of(Roof roof) {
    return ClosedForms.of(roof);
  }

  /**
   * The rules for hips and valleys over square corners: length = run × hip factor, where the run is that of the common
   * rafter on one side. At corners that are not square they need not hold.
   */
  public static List<ClosedForm> ofSquareCorners(Roof roof) {
    return ClosedForms.ofSquareCorners(roof);
  }

  /** The plan areas of all planes must close to a footprint, overhangs in, that was measured by itself. */
  public static ClosedForm footprint(Roof roof, Area.Plan footprint) {
    return ClosedForms.footprint(roof, footprint);
  }

  /** Where all planes have one pitch, the sloped area must be the footprint, overhangs in, times the pitch factor. */
  public static Optional<ClosedForm> equalPitches(Roof roof, Area.Plan footprint) {
    return ClosedForms.equalPitches(roof, footprint);
  }
}
