package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Fix;
import squaresheet.finding.Severity;
import squaresheet.formula.Formula;
import squaresheet.formula.Value;

/** Does a text that begins with an equals sign stand where a formula belongs? */
final class FormulaStoredAsText implements Check<TypedCell> {

  private static final CheckInfo INFO =
      new CheckInfo("formula-stored-as-text", Severity.ERROR, "A formula is stored as text");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean looks =
        cell.text().startsWith("=") && Formula.parse(cell.text()).value().isPresent();
    return looks && isAmongFormulas(cell) ? Stream.of(says(cell)) : Stream.empty();
  }

  /** In a run, or in a cell that others compute with; a column that shows formulas to people is neither. */
  private static boolean isAmongFormulas(TypedCell cell) {
    return cell.tab()
        .tableAt(cell.ref())
        .map(table -> table.forms().stream()
            .anyMatch(form -> form.across() == table.axis().across(cell.ref())))
        .orElseGet(() -> cell.book().links().isRead(cell.at()));
  }

  private static Finding says(TypedCell cell) {
    Formula formula = Formula.parse(cell.text()).value().orElseThrow();
    Value value = cell.book().reckoning().evaluate(formula, cell.at());
    String says = "is the text '" + cell.text() + "', so it counts as 0; as a formula it makes "
        + Shown.of(value) + " (set the cell's format to a number, then type it again)";
    return Says.about(INFO, cell.book(), cell.at(), value, says)
        .with(Fix.formula(cell.at(), formula.toFile()));
  }
}
