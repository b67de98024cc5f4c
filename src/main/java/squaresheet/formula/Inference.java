package squaresheet.formula;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.units.Unit;

/**
 * What follows for units from a formula and from what is known of the numbers in it.
 *
 * @param unit the unit of the result, where it follows
 * @param deduced units that follow for references and names that had none, by their spelling
 * @param clashes where the units do not agree, each with the part of the formula and both sides
 */
public record Inference(Optional<Unit> unit, Map<String, Unit> deduced, List<Clash> clashes) {

  /** What does not agree. */
  public enum Kind {
    /** Different things are added, compared or taken together: feet and square feet. */
    ADDED,
    /** The same thing in units of different size is: feet and inches. */
    SIZES,
    /** Plan area and sloped area are added. */
    SIDES,
    /** Plan area and sloped area are compared, subtracted or chosen between. */
    SIDES_COMPARED,
    /** The branches of a choice are in different units. */
    CHOSEN,
    /** A quantity is multiplied by a rate per something else: squares by a price per bundle. */
    MULTIPLIED,
    /** Units of different size meet in a product or quotient: feet over inches. */
    UNCANCELLED,
    /** A percentage such as 10 is used as if it were 0.10. */
    PERCENT,
    /** A percentage went into the result, which nothing divides by 100 in this formula. */
    PERCENT_LEFT,
    /** Squares are divided by 100 once more. */
    TWICE,
    /** The result is in another unit than it is to have. */
    RESULT
  }

  /**
   * A part of a formula whose units do not agree.
   *
   * @param kind what does not agree
   * @param part the part, as it is written
   * @param left the unit on one side; of a result the one it is to have
   * @param right the unit on the other side; of a result the one it has
   * @param sentence what is wrong, with both sides
   * @param sure whether no number typed into the formula may have put it right
   */
  public record Clash(
      Kind kind,
      String part,
      Optional<Unit> left,
      Optional<Unit> right,
      String sentence,
      boolean sure) {

    Clash as(Kind other) {
      return new Clash(other, part, left, right, sentence, sure);
    }
  }

  public Inference {
    deduced = Map.copyOf(deduced);
    clashes = List.copyOf(clashes);
  }

  /**
   * Looks through a formula.
   *
   * @param formula the formula
   * @param scope where it stands: its own sheet, and what its names stand for
   * @param labels the units that are known
   * @param result the unit its result is to have, or empty where any will do
   */
  public static Inference of(Formula formula, Scope scope, Labels labels, Optional<Unit> result) {
    UnitWalk walk = new UnitWalk(scope, labels);
    Measure found = walk.measure(formula.tree());
    UnitRules rules = walk.rules();
    result.ifPresentOrElse(
        wanted -> rules.wanted(formula.tree(), found, wanted), () -> rules.left(found));
    result.or(found::unit).ifPresent(unit -> walk.expect(formula.tree(), unit));
    return new Inference(result.or(found::unit), walk.deduced(), rules.clashes());
  }

  /** The unit that a formula comes to, where no number typed into it leaves that open. */
  public static Optional<Unit> exact(Formula formula, Scope scope, Labels labels) {
    Measure found = new UnitWalk(scope, labels).measure(formula.tree());
    return found.scaled() || found.pending().isPresent() ? Optional.empty() : found.unit();
  }

  /** What does not agree and no typed number may have put right. */
  public List<Clash> sure() {
    return clashes.stream().filter(Clash::sure).toList();
  }
}
