package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Do formulas filled past the data add something to a total? */
final class GhostRow implements Check<Table> {

  private static final CheckInfo INFO =
      new CheckInfo("ghost-row", Severity.WARNING, "A row without a name adds to a total");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Table table) {
    boolean named =
        table.items().filter(along -> !nameOf(table, along).isEmpty()).count() * 10
            >= table.size() * 6L;
    return named
        ? table
            .items()
            .filter(along -> nameOf(table, along).isEmpty())
            .boxed()
            .flatMap(along -> table.fills().stream()
                .filter(fill -> fill.hasForm(along) && adds(fill, along))
                .limit(1)
                .map(fill -> says(fill, along)))
        : Stream.empty();
  }

  /** The text in the first property that is text for most items: the item's name. */
  private static String nameOf(Table table, int along) {
    return table.itemName(along);
  }

  private static boolean adds(Fill fill, int along) {
    boolean more =
        fill.book().value(fill.at(along)) instanceof Value.Number number && number.value() != 0;
    return more
        && fill.book().links().readers(fill.at(along)).stream()
            .flatMap(reader -> fill.book().links().reads(reader).stream())
            .anyMatch(cells -> !cells.isOne() && cells.contains(fill.at(along)));
  }

  private static Finding says(Fill fill, int along) {
    String says = "makes " + Shown.of(fill.book().value(fill.at(along))) + " in "
        + fill.table().axis().line() + " " + fill.table().axis().name(along)
        + ", which has no name, and a total counts it; the formulas were filled past the data";
    return Says.about(INFO, fill.book(), fill.at(along), new Value.Number(0), says);
  }
}
