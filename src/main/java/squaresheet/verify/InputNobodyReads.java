package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;

/** Is a labelled rate read by no formula while the same number is typed into one? */
final class InputNobodyReads implements Check<TypedCell> {

  private static final CheckInfo INFO =
      new CheckInfo("input-nobody-reads", Severity.WARNING, "An input has no effect");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean input = cell.cell().stored() instanceof Content.Numeric
        && !cell.tab().label(cell.ref()).isEmpty()
        && cell.tab().tableAt(cell.ref()).isEmpty()
        && !cell.book().links().isRead(cell.at())
        && !isNamed(cell);
    if (!input) {
      return Stream.empty();
    }
    double value = ((Content.Numeric) cell.cell().stored()).value();
    return cell.book().formulas().entrySet().stream()
        .filter(entry -> holds(entry.getValue().tree(), value))
        .limit(1)
        .map(entry -> says(cell, entry.getKey()));
  }

  private static boolean isNamed(TypedCell cell) {
    return cell.book().workbook().names().stream()
        .anyMatch(name -> name.cell().filter(cell.at()::equals).isPresent());
  }

  /** Whether the formula holds the number, or one and the number; round numbers say nothing. */
  private static boolean holds(Node tree, double value) {
    boolean telling = value != Math.rint(value);
    return telling
        && Nodes.all(tree, Node.Number.class)
            .anyMatch(number ->
                Shown.same(number.value(), value) || Shown.same(number.value(), 1 + value));
  }

  private static Finding says(TypedCell cell, Address formula) {
    String says = "is '" + cell.tab().label(cell.ref()) + "', but no formula reads it; ="
        + cell.book().formula(formula).orElseThrow() + " at " + formula
        + " has the number typed in, so changing the input changes nothing";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
