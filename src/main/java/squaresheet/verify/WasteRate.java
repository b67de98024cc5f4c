package squaresheet.verify;

import java.util.regex.Pattern;
import squaresheet.formula.Node;

/** Whether a part of a formula is a waste rate, by the label of the cell it reads. */
final class WasteRate {

  private static final Pattern WASTE =
      Pattern.compile("(?<!\\p{L})waste(?!\\p{L})", Pattern.CASE_INSENSITIVE);
  private static final Pattern AMOUNT = Pattern.compile(
      "(?<!\\p{L})(squares?|sf|sq ?ft|bundles?|with waste|incl)(?!\\p{L})",
      Pattern.CASE_INSENSITIVE);

  private WasteRate() {}

  /** A cell whose label or heading says waste and not an amount, with a value from 0 to 1. */
  static boolean is(FormulaCell cell, Node node) {
    return cell.cells(node)
        .filter(Cells::isOne)
        .filter(one -> isRate(cell.book(), one))
        .isPresent();
  }

  private static boolean isRate(Book book, Cells one) {
    Tab tab = book.tab(one.sheet());
    String heading = tab.headings(one.block().first());
    String called = tab.tableAt(one.block().first()).isPresent()
        ? heading
        : tab.label(one.block().first());
    double value = book.number(one.first()).orElse(-1);
    return WASTE.matcher(called).find() && !AMOUNT.matcher(called).find() && value > 0 && value < 1;
  }

  /** One and a waste rate with this operator between them. */
  static boolean isOneAnd(FormulaCell cell, Node node, Node.Operator operator) {
    return node instanceof Node.Binary sum
        && sum.operator() == operator
        && sum.left() instanceof Node.Number one
        && one.value() == 1
        && is(cell, sum.right());
  }
}
