package squaresheet.formula;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.units.Unit;

/**
 * What follows for units from a formula and from what is known of the numbers in it.
 *
 * @param unit the unit of the result, where it follows
 * @param deduced units that follow for references and names that had none, by their spelling
 * @param findings where the units do not agree, each with the part of the formula and both sides
 */
public record Inference(Optional<Unit> unit, Map<String, Unit> deduced, List<Finding> findings) {

  /** What units that do not agree are reported under. */
  public static final CheckInfo UNITS =
      new CheckInfo("units-do-not-agree", Severity.WARNING, "The units in a formula do not agree");

  public Inference {
    deduced = Map.copyOf(deduced);
    findings = List.copyOf(findings);
  }

  /**
   * Looks through a formula.
   *
   * @param formula the formula
   * @param scope where it stands: its own sheet, and what its names stand for
   * @param labels the units that are known
   * @param result the unit its result is to have, or empty where any will do
   * @param where the place that findings speak of
   */
  public static Inference of(
      Formula formula, Scope scope, Labels labels, Optional<Unit> result, Where where) {
    UnitWalk walk = new UnitWalk(scope, labels);
    Measure found = walk.measure(formula.tree());
    UnitRules rules = walk.rules();
    result.ifPresent(wanted -> rules.wanted(formula.tree(), found, wanted));
    result.or(found::unit).ifPresent(unit -> walk.expect(formula.tree(), unit));
    List<Finding> findings = rules.clashes().stream()
        .map(clash -> new Finding(UNITS, where, clash.part(), "", clash.sentence(), ""))
        .toList();
    return new Inference(result.or(found::unit), walk.deduced(), findings);
  }
}
