package squaresheet.formula;

import java.util.stream.Stream;
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

  /**
   * Whether a part comes to an array without being asked to: an array constant, a name that stands for one, or an operator
   * or a function of single values over these.
   */
  static boolean gives(Evaluation evaluation, Node node) {
    if (node instanceof Node.Array) {
      return true;
    }
    if (node instanceof Node.Name name) {
      return evaluation
          .scope()
          .defined(name)
          .filter(Node.Array.class::isInstance)
          .isPresent();
    }
    boolean foreign = node instanceof Node.Call call && Catalog.get(call.function()) == null;
    if (foreign || node instanceof Node.Applied) {
      return false; // it is not worked out, so not element by element either
    }
    for (int i = 0; i < node.parts().size(); i++) {
      if (!Trees.takesMany(node, i) && gives(evaluation, node.parts().get(i))) {
        return true;
      }
    }
    return false;
  }

  /** Whether operators and functions of single values stand over several cells, which are one cell there. */
  static boolean hides(Node node) {
    if (node instanceof Node.Reference reference) {
      return !reference.isCell();
    }
    for (int i = 0; i < node.parts().size(); i++) {
      if (!Trees.takesMany(node, i) && hides(node.parts().get(i))) {
        return true;
      }
    }
    return node instanceof Node.Table;
  }

  /**
   * The values of a part, element by element.
   *
   * @param cells whether cells under operators count as arrays too; else only arrays do, and cells give the one in the
   *     formula's own row or column
   */
  static Grid of(Evaluation evaluation, Node node, boolean cells) {
    boolean operator = node instanceof Node.Binary binary
        && binary.operator().strength() < Operator.UNION.strength();
    if (operator || node instanceof Node.Unary) {
      return each(evaluation, node, cells);
    }
    if (node instanceof Node.Call call && Catalog.get(call.function()) != null) {
      return called(evaluation, call, cells);
    }
    return cells || gives(evaluation, node)
        ? evaluation.grid(node)
        : Grid.of(evaluation.scalar(node));
  }

  private static Grid each(Evaluation evaluation, Node node, boolean cells) {
    Grid[] operands = new Grid[node.parts().size()];
    for (int i = 0; i < operands.length; i++) {
      operands[i] = of(evaluation, node.parts().get(i), cells);
    }
    return stretched(operands, held -> {
      if (node instanceof Node.Unary unary) {
        return Evaluation.signed(unary.sign(), held[0]);
      }
      return Evaluation.combined(((Node.Binary) node).operator(), held[0], held[1]);
    });
  }

  private static Grid called(Evaluation evaluation, Node.Call call, boolean cells) {
    Spec spec = Catalog.get(call.function());
    Grid[] singles = new Grid[call.arguments().size()];
    boolean many = false;
    for (int i = 0; i < singles.length; i++) {
      Node argument = call.arguments().get(i);
      if (spec.takes(i) == 's' && !(argument instanceof Node.Omitted)) {
        singles[i] = of(evaluation, argument, cells || ReferenceWork.chooses(call, i));
        many |= !singles[i].isSingle();
      }
    }
    if (many) {
      return manyCalls(evaluation, call, singles, cells);
    }
    Value[] held = Stream.of(singles).map(it -> it == null ? null : it.at(0)).toArray(Value[]::new);
    return once(
        call, singles, new Arguments(evaluation, call.arguments(), held, cells), spec.body());
  }

  private static Grid manyCalls(
      Evaluation evaluation, Node.Call call, Grid[] singles, boolean cells) {
    if (call.function().equals("INDEX")) {
      throw Signal.notChecked("INDEX with several rows or columns at once is not followed");
    }
    Spec spec = Catalog.get(call.function());
    return stretched(singles, held -> spec.body()
        .apply(new Arguments(evaluation, call.arguments(), held, cells)));
  }

  private static Grid once(Node.Call call, Grid[] singles, Arguments arguments, Spec.Body body) {
    try {
      if (ReferenceWork.gives(call)) {
        return ReferenceWork.of(call, arguments, index -> singles[index]);
      }
      return Grid.of(body.apply(arguments));
    } catch (Signal signal) {
      return Grid.of(signal.fault());
    }
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
