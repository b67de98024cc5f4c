package squaresheet.verify;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/** Do all rows read one row's cell of a column that has a value for each? */
final class ReferenceHeldToRow implements Check<Fill> {

  private static final CheckInfo INFO = new CheckInfo(
      "reference-held-to-row", Severity.WARNING, "Every row reads the first row's value");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Fill fill) {
    if (!fill.isSound()) {
      return Stream.empty();
    }
    return Nodes.all(fill.sample().tree(), Node.Reference.class)
        .filter(reference -> reference.isCell() && isHeld(fill, reference))
        .flatMap(reference -> held(fill, reference))
        .limit(1);
  }

  private static boolean isHeld(Fill fill, Node.Reference reference) {
    boolean fixed = fill.table().axis() == Axis.DOWN
        ? reference.first().rowFixed()
        : reference.first().columnFixed();
    return fixed && reference.sheet().isEmpty();
  }

  /** Whether the cell belongs to one of the table's items, whose own values differ from it. */
  private static Stream<Finding> held(Fill fill, Node.Reference reference) {
    Table table = fill.table();
    Ref at = reference.block().first();
    int along = table.axis().along(at);
    int across = table.axis().across(at);
    boolean perItem = across != fill.form().across()
        && along >= table.first()
        && along <= table.last()
        && (table.inputs().contains(across)
            || table.forms().stream().anyMatch(form -> form.across() == across));
    OptionalDouble one = fill.book().number(fill.tab().at(at));
    if (!perItem || one.isEmpty()) {
      return Stream.empty();
    }
    return table
        .items()
        .filter(fill::hasForm)
        .filter(item -> differs(fill, table.at(item, across), one.getAsDouble()))
        .limit(1)
        .mapToObj(item -> says(fill, reference, item, across));
  }

  private static boolean differs(Fill fill, Address own, double one) {
    OptionalDouble value = fill.book().number(own);
    return value.isPresent() && !Shown.same(value.getAsDouble(), one);
  }

  private static Finding says(Fill fill, Node.Reference reference, int item, int across) {
    Address own = fill.table().at(item, across);
    String says =
        "reads " + Formula.of(reference) + " like every " + fill.table().axis().line()
            + " of the column, but its own is " + own.ref() + " with "
            + Shown.of(fill.book().value(own))
            + "; take the dollar sign out and fill the formula again";
    return Says.about(INFO, fill.book(), fill.at(item), says);
  }
}
