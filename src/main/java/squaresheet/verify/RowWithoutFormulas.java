package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Fix;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Was a row added to a table without the formulas of the other rows? */
final class RowWithoutFormulas implements Check<Table> {

  private static final CheckInfo INFO = new CheckInfo(
      "row-without-formulas", Severity.ERROR, "A row has inputs but none of the formulas");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Table table) {
    return isATotalsRow(table) ? Stream.empty() : findings(table);
  }

  /** Whether all that is filled across are sums of the columns: a column of rates or prices has none. */
  private static boolean isATotalsRow(Table table) {
    return table.axis() == Axis.ACROSS
        && table.fills().stream()
            .allMatch(fill ->
                Nodes.isCall(fill.sample().tree(), "SUM", "SUBTOTAL", "AVERAGE", "MAX", "MIN"));
  }

  private static Stream<Finding> findings(Table table) {
    return table
        .items()
        .filter(along -> table.hasInputs(along) && isBare(table, along))
        .filter(along ->
            table.fills().stream().noneMatch(fill -> MetricRows.isOfOtherUnit(fill, along)))
        .filter(along -> !Words.saysOutside(table.tab().wordsAbout(table.ref(along, 0))))
        .mapToObj(along -> says(table, along));
  }

  private static boolean isBare(Table table, int along) {
    return table.fills().stream().allMatch(fill -> fill.cell(along).isBlank())
        && table.fills().stream().anyMatch(fill -> comesToSomething(fill, along));
  }

  private static boolean comesToSomething(Fill fill, int along) {
    return fill.isSound()
        && !(fill.expected(along) instanceof Value.Number number && number.value() == 0);
  }

  private static Finding says(Table table, int along) {
    Fill first = table.fills().get(0);
    String name = table.itemName(along);
    String says = table.axis().line() + " " + table.axis().name(along)
        + (name.isEmpty() ? "" : " ('" + name + "')") + " has typed numbers but none of the "
        + Says.count(table.forms().size(), "formula") + " of the other "
        + table.axis().line()
        + "s, so it counts for nothing; copy them from the " + table.axis().line() + " above";
    return Says.about(INFO, table.tab().book(), first.at(along), "=" + first.wanted(along), says)
        .with(table.fills().stream()
            .filter(fill -> fill.cell(along).isBlank())
            .map(fill -> fill.fix(along))
            .reduce(Fix.NONE, Fix::and));
  }
}
