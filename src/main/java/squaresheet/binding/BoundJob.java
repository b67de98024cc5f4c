package squaresheet.binding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.formula.Formula;
import squaresheet.formula.Value;
import squaresheet.job.JobInput;
import squaresheet.product.Selection;
import squaresheet.roof.RoofNotes;
import squaresheet.sheet.Address;

/**
 * A job as a workbook holds it: what was typed, taken out of the cells, and which cell is which value. Typed cells are taken
 * as they stand; a formula in the place of a typed value is worked out anew. Stored results are never taken.
 *
 * @param input the job, rebuilt from the cells
 * @param rules the cells that hold rules, each with its formula as it stands
 * @param cells which cell is which item
 * @param coverage which parts of the way to the price are bound
 */
public record BoundJob(JobInput input, List<BoundRule> rules, CellMap cells, List<Part> coverage) {

  public BoundJob {
    rules = List.copyOf(rules);
    coverage = List.copyOf(coverage);
  }

  /** The roof as written. */
  public RoofNotes roof() {
    return input.roof();
  }

  /** The products chosen. */
  public Selection selection() {
    return input.selection();
  }

  /** What was typed for the settings, by name. */
  public Map<String, Value> settings() {
    return input.settings();
  }

  /**
   * A cell that holds a rule.
   *
   * @param name the rule's name
   * @param subject what it is worked out for: {@code job}, {@code plane A}, {@code edge A top}
   * @param cell the cell
   * @param formula the formula over names, cells of the same row spelled as the names of their columns; nothing where the
   *     cell holds no formula that can be read
   * @param isAsInRulebook whether that is the rulebook's own formula
   */
  public record BoundRule(
      String name,
      String subject,
      Address cell,
      Optional<Formula> formula,
      boolean isAsInRulebook) {}

  /**
   * A part of the way from the tape to the price.
   *
   * @param name such as {@code planes} or {@code prices}
   * @param bound how many of its values are bound to cells
   * @param of how many there are
   */
  public record Part(String name, int bound, int of) {

    /** Whether every value of the part is bound. */
    public boolean isWhole() {
      return bound == of && of > 0;
    }

    @Override
    public String toString() {
      return name + ": " + bound + " of " + of;
    }
  }
}
