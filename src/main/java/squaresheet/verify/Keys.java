package squaresheet.verify;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.formula.Node;
import squaresheet.formula.Value;

/**
 * A word that a conditional sum or count looks for, and where.
 *
 * @param key the word, with no sign of comparison or wildcard in it
 * @param list the cells it is looked for in
 */
record Keys(String key, Cells list) {

  /** All words that a formula looks for. */
  static Stream<Keys> asked(FormulaCell cell) {
    return cell.calls("SUMIF", "COUNTIF", "AVERAGEIF", "SUMIFS", "COUNTIFS")
        .flatMap(call -> of(cell, call));
  }

  private static Stream<Keys> of(FormulaCell cell, Node.Call call) {
    int from = call.function().equals("SUMIFS") ? 1 : 0;
    return IntStream.iterate(from, i -> i + 1 < call.arguments().size(), i -> i + 2)
        .boxed()
        .flatMap(i -> cell.cells(call.arguments().get(i)).stream()
            .flatMap(
                list -> key(cell, call.arguments().get(i + 1)).map(key -> new Keys(key, list))));
  }

  private static Stream<String> key(FormulaCell cell, Node node) {
    return cell.book().reckoning().evaluate(node, cell.at()) instanceof Value.Text text
            && !text.value().matches("[<>=].*|.*[*?~].*|\\s*")
        ? Stream.of(text.value())
        : Stream.empty();
  }
}
