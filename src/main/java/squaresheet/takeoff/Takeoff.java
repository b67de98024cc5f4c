package squaresheet.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.formula.Value;
import squaresheet.product.Selection;
import squaresheet.units.Count;

/** The quantities of a job: every rule of a rulebook, worked out over what the roof, the products and the settings give. */
public final class Takeoff {

  private final Rulebook rulebook;
  private final Selection selection;
  private final Values values;

  private Takeoff(Rulebook rulebook, Selection selection, Values values) {
    this.rulebook = rulebook;
    this.selection = selection;
    this.values = values;
  }

  /**
   * Works out every rule. What could not be worked out, settings that are none, and limits that are not kept are said; the
   * rest goes on.
   */
  public static Read<Takeoff> of(Rulebook rulebook, Names names, Selection selection) {
    Values values = new Values(rulebook, names.with(selection));
    Takeoff takeoff = new Takeoff(rulebook, selection, values);
    List<Finding> findings = new ArrayList<>(unknown(rulebook, names));
    findings.addAll(values.findings());
    findings.addAll(new Limits(takeoff).findings());
    return Read.of(takeoff, findings);
  }

  /** Values that no rule asks for under that name. */
  private static List<Finding> unknown(Rulebook rulebook, Names names) {
    return names.job().keySet().stream()
        .filter(name -> rulebook.rule(name).isEmpty())
        .sorted()
        .map(name -> new Finding(
            Complaints.SETTING_UNKNOWN,
            new Where.OfItem("job", name),
            "no setting or given value '" + name + "'" + rulebook.nearest(name)))
        .toList();
  }

  /** The rules it was worked out by. */
  public Rulebook rulebook() {
    return rulebook;
  }

  /** The products it was worked out for. */
  public Selection selection() {
    return selection;
  }

  /** The one value of a name for the job; {@code #N/A} where it could not be worked out, {@code #NAME?} where there is none. */
  public Value value(String name) {
    return values.job(name);
  }

  /** The values of a plane or edge name, in the order of the rows; the one value of a job name. */
  public List<Value> values(String name) {
    return values.column(name);
  }

  /** The number that a job name comes to, in the unit of its rule, if it comes to one. */
  public Optional<Double> number(String name) {
    return value(name) instanceof Value.Number number
        ? Optional.of(number.value())
        : Optional.empty();
  }

  /** The number that a name comes to in a row, 0 and up, in the unit of its rule, if it comes to one. */
  public Optional<Double> number(String name, int row) {
    return values(name).get(row) instanceof Value.Number number
        ? Optional.of(number.value())
        : Optional.empty();
  }

  /** How many values a name has: one for the job, or one for each plane or edge. */
  public int rows(String name) {
    return values(name).size();
  }

  /** What to order: for each rule that orders a chosen product and comes to a pack or more, so many packs. */
  public List<Order> orders() {
    return rulebook.rules().stream().flatMap(rule -> order(rule).stream()).toList();
  }

  private Optional<Order> order(Rule rule) {
    return rule.role().flatMap(selection::of).flatMap(product -> number(rule.name())
        .filter(packs -> packs > 0)
        .map(packs -> new Order(
            rule, product, new Count(Math.round(packs), product.packing().pack()))));
  }

  /** How the one value of a job name came about. */
  public Worked worked(String name) {
    return worked(name, 0);
  }

  /** How a value came about: of the plane or edge in this row, 0 and up, or of the job. */
  public Worked worked(String name, int row) {
    return values.worked(name, row);
  }
}
