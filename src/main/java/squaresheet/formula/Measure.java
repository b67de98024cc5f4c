package squaresheet.formula;

import java.util.Optional;
import java.util.OptionalDouble;
import squaresheet.units.Unit;

/**
 * What is known of a number's unit while a formula is looked through.
 *
 * @param unit the unit, or empty where it is not known
 * @param literal the number itself, where it is typed into the formula
 * @param scaled whether a conversion went in, so that the size of the unit (ft or in) is no longer sure
 */
record Measure(Optional<Unit> unit, OptionalDouble literal, boolean scaled) {

  static final Measure UNKNOWN = new Measure(Optional.empty(), OptionalDouble.empty(), false);
  static final Measure RATIO = of(Unit.RATIO);

  static Measure of(Unit unit) {
    return new Measure(Optional.of(unit), OptionalDouble.empty(), false);
  }

  static Measure of(Unit unit, boolean scaled) {
    return new Measure(Optional.of(unit), OptionalDouble.empty(), scaled);
  }

  static Measure literal(double number) {
    return new Measure(Optional.empty(), OptionalDouble.of(number), false);
  }

  boolean isKnown() {
    return unit.isPresent();
  }

  boolean isLiteral() {
    return literal.isPresent();
  }

  Measure loosened() {
    return new Measure(unit, OptionalDouble.empty(), true);
  }

  /** The unit without its side: what is left when a factor may have turned plan into slope. */
  Measure sideless() {
    return new Measure(unit.map(it -> it.as(Unit.Kind.AREA)), OptionalDouble.empty(), scaled);
  }

  boolean isRatio() {
    return unit.filter(it -> it.isLike(Unit.RATIO)).isPresent();
  }

  boolean isPitch() {
    return unit.filter(it -> it.kind() == Unit.Kind.PITCH).isPresent();
  }
}
