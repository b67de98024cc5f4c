package squaresheet.formula;

import java.util.List;
import squaresheet.formula.Node.Operator;

/** Operators and functions over arrays, element by element; single rows, columns and values stretch. */
final class ArrayWork {

  /** The largest array computed at once: a whole used column of ten sheets' worth. */
  private static final int LARGEST = 1 << 20;

  private ArrayWork() {}

  static Grid constants(Evaluation evaluation, Node.Array array) {
    Value[] values = array.parts().stream().map(evaluation::scalar).toArray(Value[]::new);
    return Grid.of(array.rows().size(), array.rows().get(0).size(), values);
  }

  static Grid of(Evaluation evaluation, Node node) {
    boolean operator = node instanceof Node.Binary binary
        && binary.operator().strength() < Operator.UNION.strength();
    if (operator || node instanceof Node.Unary) {
      return each(evaluation, node, node.parts());
    }
    if (node instanceof Node.Call call && Catalog.get(call.function()) != null) {
      return called(evaluation, call);
    }
    return evaluation.grid(node);
  }

  private static Grid each(Evaluation evaluation, Node node, List<Node> parts) {
    Grid[] operands = parts.stream().map(part -> of(evaluation, part)).toArray(Grid[]::new);
    return stretched(operands, held -> {
      if (node instanceof Node.Unary unary) {
        return Evaluation.signed(unary.sign(), held[0]);
      }
      return Evaluation.combined(((Node.Binary) node).operator(), held[0], held[1]);
    });
  }

  private static Grid called(Evaluation evaluation, Node.Call call) {
    Spec spec = Catalog.get(call.function());
    Grid[] singles = new Grid[call.arguments().size()];
    boolean many = false;
    for (int i = 0; i < singles.length; i++) {
      Node argument = call.arguments().get(i);
      if (spec.takes(i) == 's' && !(argument instanceof Node.Omitted)) {
        singles[i] = of(evaluation, argument);
        many |= !singles[i].isSingle();
      }
    }
    if (!many) {
      return evaluation.grid(call);
    }
    return stretched(
        singles, held -> spec.body().apply(new Arguments(evaluation, call.arguments(), held)));
  }

  private interface Element {
    Value of(Value[] held);
  }

  private static Grid stretched(Grid[] operands, Element element) {
    int rows = 1;
    int columns = 1;
    for (Grid operand : operands) {
      rows = operand == null ? rows : Math.max(rows, operand.rows);
      columns = operand == null ? columns : Math.max(columns, operand.columns);
    }
    if ((long) rows * columns > LARGEST) {
      throw Signal.notChecked("an array of " + rows + " rows and " + columns + " columns");
    }
    Value[] results = new Value[rows * columns];
    for (int i = 0; i < results.length; i++) {
      results[i] = element(operands, element, i / columns, i % columns);
    }
    return Grid.of(rows, columns, results);
  }

  private static Value element(Grid[] operands, Element element, int row, int column) {
    Value[] held = new Value[operands.length];
    for (int i = 0; i < operands.length; i++) {
      held[i] = operands[i] == null ? null : operands[i].stretched(row, column);
    }
    try {
      Value value = element.of(held);
      return value instanceof Value.Matrix matrix ? matrix.at(0, 0) : value;
    } catch (Signal signal) {
      return signal.fault();
    }
  }
}
