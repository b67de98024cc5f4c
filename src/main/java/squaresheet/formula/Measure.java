package squaresheet.formula;

import java.util.Optional;
import java.util.OptionalDouble;
import squaresheet.units.Unit;

/**
 * What is known of a number's unit while a formula is looked through.
 *
 * @param unit the unit, or empty where it is not known
 * @param literal the number itself, where it is typed into the formula
 * @param scaled whether a typed number went in, so that the size of the unit (ft or in) is no longer sure
 * @param pending what is wrong with it unless a later factor puts it right: 100 under a percentage, 12 on feet over inches
 */
record Measure(
    Optional<Unit> unit,
    OptionalDouble literal,
    boolean scaled,
    Optional<Inference.Clash> pending) {

  static final Measure UNKNOWN =
      new Measure(Optional.empty(), OptionalDouble.empty(), false, Optional.empty());
  static final Measure RATIO = of(Unit.RATIO);

  static Measure of(Unit unit) {
    return of(unit, false);
  }

  static Measure of(Unit unit, boolean scaled) {
    return new Measure(Optional.of(unit), OptionalDouble.empty(), scaled, Optional.empty());
  }

  static Measure literal(double number) {
    return new Measure(Optional.empty(), OptionalDouble.of(number), false, Optional.empty());
  }

  boolean isKnown() {
    return unit.isPresent();
  }

  boolean isLiteral() {
    return literal.isPresent();
  }

  Measure loosened() {
    return new Measure(unit, OptionalDouble.empty(), true, pending);
  }

  /** The unit without its side: what is left when a factor may have turned plan into slope. */
  Measure sideless() {
    return new Measure(
        unit.map(it -> it.as(Unit.Kind.AREA)), OptionalDouble.empty(), scaled, pending);
  }

  Measure pending(Inference.Clash clash) {
    return new Measure(unit, literal, scaled, Optional.of(clash));
  }

  /** Whether this is still to be put right. */
  boolean awaits(Inference.Kind kind) {
    return pending.filter(clash -> clash.kind() == kind).isPresent();
  }

  /** What is left when that was put right, or said. */
  Measure settled() {
    return new Measure(unit, literal, scaled, Optional.empty());
  }

  boolean isRatio() {
    return unit.filter(it -> it.isLike(Unit.RATIO)).isPresent();
  }

  /** Whether it is a percentage, of which 10 are a tenth. */
  boolean isWholePercent() {
    return !scaled && isRatio() && unit.get().factorTo(Unit.RATIO) == 0.01;
  }

  boolean isPitch() {
    return unit.filter(it -> it.kind() == Unit.Kind.PITCH).isPresent();
  }

  boolean isArea() {
    return unit.filter(Unit::isArea).isPresent();
  }
}
