package squaresheet.verify;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Does a total leave out rows at the start or the end of the table it adds up? */
final class TotalStopsShort implements Check<SumCell> {

  private static final CheckInfo INFO =
      new CheckInfo("total-stops-short", Severity.ERROR, "A total leaves out rows of its table");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(SumCell sum) {
    if (!sum.isColumn() && !sum.isRow()) {
      return Stream.empty();
    }
    return sum.tab().tables().stream()
        .filter(table -> table.axis() == sum.axis() && holds(table, sum))
        .limit(1)
        .flatMap(table -> left(table, sum));
  }

  /** Whether the sum takes in most of a run of the table, and nothing outside of it. */
  private static boolean holds(Table table, SumCell sum) {
    boolean run = table.forms().stream().anyMatch(form -> form.across() == sum.across())
        || table.inputs().contains(sum.across());
    return run
        && sum.first() >= table.first()
        && sum.last() <= table.last()
        && (sum.last() - sum.first() + 1) * 2 >= table.size()
        && !sum.formula()
            .tab()
            .tableAt(sum.formula().at().ref())
            .equals(java.util.Optional.of(table));
  }

  private static Stream<Finding> left(Table table, SumCell sum) {
    int[] missing = IntStream.rangeClosed(table.first(), table.last())
        .filter(along -> along < sum.first() || along > sum.last())
        .filter(along -> counts(sum, along))
        .toArray();
    return missing.length == 0 ? Stream.empty() : Stream.of(says(table, sum, missing));
  }

  private static boolean counts(SumCell sum, int along) {
    Value value = sum.book().value(sum.tab().at(sum.ref(along)));
    return value instanceof Value.Number number
        && number.value() != 0
        && !Words.saysOutside(sum.tab().wordsAbout(sum.ref(along)))
        && !isAddedBeside(sum, along)
        && !isAddedElsewhere(sum, along);
  }

  /** Whether another total of the same column takes the item in and leaves these out: the parts of one table. */
  private static boolean isAddedElsewhere(SumCell sum, int along) {
    return sum.book().links().readers(sum.tab().at(sum.ref(along))).stream()
        .flatMap(reader -> sum.book().links().reads(reader).stream())
        .filter(cells ->
            !cells.isOne() && cells.block().columns() == sum.cells().block().columns())
        .anyMatch(cells -> !cells.contains(sum.cells().first()));
  }

  private static boolean isAddedBeside(SumCell sum, int along) {
    return sum.formula().reads().stream()
        .anyMatch(
            cells -> !cells.equals(sum.cells()) && cells.contains(sum.tab().at(sum.ref(along))));
  }

  private static Finding says(Table table, SumCell sum, int[] missing) {
    double more = 0;
    for (int along : missing) {
      more += sum.book().number(sum.tab().at(sum.ref(along))).orElse(0);
    }
    double now = sum.book().number(sum.formula().at()).orElse(0);
    String which = sum.tab().at(sum.ref(missing[0]))
        + (missing.length == 1 ? "" : " and " + Says.count(missing.length - 1, "other"));
    String name = table.itemName(missing[0]);
    String says = "adds up " + sum.cells().block() + " and leaves out " + which
        + (name.isEmpty() ? "" : " ('" + name + "')") + ", which holds " + Shown.number(more)
        + "; over the whole table it makes " + Shown.number(now + more);
    return Says.about(INFO, sum.book(), sum.formula().at(), new Value.Number(now + more), says);
  }
}
