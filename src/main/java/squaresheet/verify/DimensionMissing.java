package squaresheet.verify;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Is one dimension of a named plane blank or nothing, so that its area comes to nothing? */
final class DimensionMissing implements Check<Fill> {

  private static final CheckInfo INFO = new CheckInfo(
      "dimension-missing", Severity.WARNING, "A plane lacks a dimension and has no area");

  private static final Pattern DIMENSION = Pattern.compile(
      "(?<!\\p{L})(length|width|run|eave|rafter|rake|height|depth|span|long|wide)(?!\\p{L})",
      Pattern.CASE_INSENSITIVE);
  /** Many planes have none of these. */
  private static final Pattern NOT_ALL = Pattern.compile(
      "(?<!\\p{L})(overhang|deduct|opening|cut|chimney|skylight|dormer|valley|hip|ridge|wall|flashing|offset|less)",
      Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Fill fill) {
    return fill.table()
        .items()
        .filter(along -> fill.hasForm(along) && !fill.table().itemName(along).isEmpty())
        .filter(along -> fill.book().number(fill.at(along)).orElse(1) == 0)
        .boxed()
        .flatMap(along -> missing(fill, along));
  }

  private static Stream<Finding> missing(Fill fill, int along) {
    FormulaCell cell = new FormulaCell(
        fill.book(), fill.at(along), fill.book().formula(fill.at(along)).orElseThrow());
    List<Address> dimensions = Nodes.factors(cell.tree()).stream()
        .flatMap(node -> cell.cells(node).stream())
        .filter(Cells::isOne)
        .map(Cells::first)
        .filter(at -> isDimension(fill.table(), at, along))
        .toList();
    List<Address> nothing =
        dimensions.stream().filter(at -> fill.book().number(at).orElse(0) == 0).toList();
    boolean one = nothing.size() == 1
        && dimensions.size() >= 2
        && !isLeftOut(fill, along)
        && !fill.book().cell(nothing.get(0)).isFormula();
    return one ? Stream.of(says(fill, nothing.get(0), along)) : Stream.empty();
  }

  private static boolean isDimension(Table table, Address at, int along) {
    boolean own = at.sheet().equals(table.tab().name()) && table.axis().along(at.ref()) == along;
    String heading = table.heading(table.axis().across(at.ref()));
    return own && DIMENSION.matcher(heading).find() && !NOT_ALL.matcher(heading).find();
  }

  private static boolean isLeftOut(Fill fill, int along) {
    return Words.saysOutside(fill.tab().wordsAbout(fill.ref(along)));
  }

  private static Finding says(Fill fill, Address at, int along) {
    String says =
        "is " + Shown.of(fill.book().value(at)) + " for '" + fill.table().itemName(along) + "', so "
            + fill.at(along) + " comes to nothing and the plane is not ordered";
    return Says.about(INFO, fill.book(), at, says);
  }
}
