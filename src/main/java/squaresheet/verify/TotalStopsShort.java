package squaresheet.verify;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

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
        && !isBehind(sum, along)
        && !isAddedBeside(sum, along)
        && !isAddedElsewhere(sum, along)
        && !isRateOnPart(sum, along);
  }

  /** Whether the item is the sum itself or made of it, as pay is of the hours of the week. */
  private static boolean isBehind(SumCell sum, int along) {
    Address item = sum.tab().at(sum.ref(along));
    Address total = sum.formula().at();
    return item.equals(total)
        || isBeyond(sum, along)
        || sum.book().links().dependents(List.of(total)).contains(item);
  }

  /** Whether the total stands between what it adds up and the item, in one line with them. */
  private static boolean isBeyond(SumCell sum, int along) {
    int total = sum.axis().along(sum.formula().at().ref());
    boolean inLine = sum.axis().across(sum.formula().at().ref()) == sum.across();
    return inLine
        && ((sum.last() < total && total < along) || (along < total && total < sum.first()));
  }

  /** Whether a rate is put on these items while another total takes in all: a tax on the material lines, say. */
  private static boolean isRateOnPart(SumCell sum, int along) {
    return isUnderRate(sum)
        && sum.book().links().readers(sum.tab().at(sum.ref(along))).stream()
            .filter(reader -> !reader.equals(sum.formula().at()))
            .flatMap(reader -> sum.book().links().reads(reader).stream())
            .filter(cells -> cells.block().columns() == sum.cells().block().columns())
            .anyMatch(cells -> cells.sharedWith(sum.cells()) == sum.cells().size());
  }

  private static boolean isUnderRate(SumCell sum) {
    return Nodes.all(sum.formula().tree(), Node.Binary.class)
        .filter(product -> product.operator() == Node.Operator.TIMES)
        .anyMatch(product -> isTimesRate(sum, product.left(), product.right())
            || isTimesRate(sum, product.right(), product.left()));
  }

  private static boolean isTimesRate(SumCell sum, Node one, Node other) {
    return one.equals(sum.call()) && isRate(sum, other);
  }

  private static boolean isRate(SumCell sum, Node factor) {
    return factor instanceof Node.Number number
        ? isShare(number.value())
        : sum.formula()
            .cells(factor)
            .filter(Cells::isOne)
            .map(cells -> sum.book().number(cells.first()))
            .filter(value -> value.isPresent() && isShare(value.getAsDouble()))
            .isPresent();
  }

  private static boolean isShare(double value) {
    return value > 0 && value < 1;
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
