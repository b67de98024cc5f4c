package squaresheet.verify;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** Does one row of a run have another formula than the rest, with another value? */
final class OddFormulaInRun implements Check<Fill> {

  private static final CheckInfo INFO = new CheckInfo(
      "odd-formula-in-run", Severity.WARNING, "One formula differs from the others of its column");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Fill fill) {
    return OddInRun.in(fill)
        .filter(odd -> !odd.isNamedElsewhere())
        .filter(odd -> isAFormulaForIt(fill, odd) && !isOfFreeShape(fill, odd))
        .filter(odd -> !isOfItsOwnColumn(fill, odd) && !readsItself(fill, odd))
        .filter(
            odd -> !Shown.same(fill.expected(odd.along()), fill.book().value(fill.at(odd.along()))))
        .map(OddFormulaInRun::says);
  }

  /** Whether the run's formula reads cells and works in this row: otherwise the row is another sort of item. */
  private static boolean isAFormulaForIt(Fill fill, OddInRun odd) {
    boolean moves = Nodes.any(fill.sample().tree(), node -> isMoving(fill, node));
    return moves && !(fill.expected(odd.along()) instanceof Value.Fault);
  }

  /** Whether the item is called a polygon and is worked out of its corners, which stand in the formula itself. */
  private static boolean isOfFreeShape(Fill fill, OddInRun odd) {
    return odd.formula().references().isEmpty()
        && fill.tab()
            .wordsAbout(fill.ref(odd.along()))
            .toLowerCase(Locale.ROOT)
            .contains("polygon");
  }

  /** Whether the reference goes along with the items; a formula of held cells and names alone is no run. */
  private static boolean isMoving(Fill fill, Node node) {
    return node instanceof Node.Table
        || (node instanceof Node.Reference reference
            && !(fill.table().axis() == Axis.DOWN
                ? reference.first().rowFixed()
                : reference.first().columnFixed()));
  }

  /** Whether it reads other items of its own run and nothing else, as a subtotal and a rate under two totals do. */
  private static boolean isOfItsOwnColumn(Fill fill, OddInRun odd) {
    List<Cells> reads = fill.book().links().reads(fill.at(odd.along()));
    return !fill.isChain()
        && !reads.isEmpty()
        && reads.stream()
            .allMatch(cells -> cells.sheet().equals(fill.tab().name())
                && fill.table().axis().across(cells.block().first())
                    == fill.form().across()
                && fill.table().axis().across(cells.block().last())
                    == fill.form().across());
  }

  /** Whether the run's formula would come back to this very cell: then the row is another sort of item. */
  private static boolean readsItself(Fill fill, OddInRun odd) {
    Address here = fill.at(odd.along());
    Set<Address> behind = fill.book().links().dependents(List.of(here));
    return Nodes.all(fill.wanted(odd.along()).tree(), Node.Reference.class)
        .filter(Node.Reference::isCell)
        .map(reference -> fill.book().references().cells(reference, here))
        .flatMap(Optional::stream)
        .anyMatch(cells -> cells.first().equals(here) || behind.contains(cells.first()));
  }

  private static Finding says(OddInRun odd) {
    Fill fill = odd.fill();
    String says = "is =" + odd.formula() + ", but " + fill.others() + " have ="
        + fill.wanted(odd.along()) + " here, which makes " + Shown.of(fill.expected(odd.along()));
    return Says.about(INFO, fill.book(), fill.at(odd.along()), fill.expected(odd.along()), says)
        .with(fill.fix(odd.along()));
  }
}
