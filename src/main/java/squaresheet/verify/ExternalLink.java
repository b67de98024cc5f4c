package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;

/** Does a formula read another workbook, whose values nobody has refreshed for sure? */
final class ExternalLink implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("external-link", Severity.WARNING, "A formula reads another workbook");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    boolean first = isExternal(cell)
        && cell.book().formulas().keySet().stream()
            .filter(other -> isExternal(
                new FormulaCell(cell.book(), other, cell.book().formula(other).orElseThrow())))
            .filter(other -> source(cell.book(), other).equals(source(cell.book(), cell.at())))
            .findFirst()
            .filter(cell.at()::equals)
            .isPresent();
    return first ? Stream.of(says(cell)) : Stream.empty();
  }

  private static boolean isExternal(FormulaCell cell) {
    return cell.book().cell(cell.at()).formula().matches(".*\\[[^\\]]+][^\\]]*!.*")
        && Nodes.any(cell.tree(), node -> node instanceof Node.Unsupported);
  }

  private static String source(Book book, Address cell) {
    String formula = book.cell(cell).formula();
    return formula.substring(formula.indexOf('['), formula.indexOf(']') + 1);
  }

  private static Finding says(FormulaCell cell) {
    String source = source(cell.book(), cell.at());
    long others = cell.book().formulas().keySet().stream()
        .filter(other -> cell.book().cell(other).formula().contains(source))
        .count();
    String says = "reads another workbook (" + source + ", " + Says.count(others, "formula")
        + "), so it is not checked and may be old; bring the values into this workbook for the bid";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
