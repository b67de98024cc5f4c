package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import squaresheet.formula.Node.Corner;
import squaresheet.formula.Node.Extent;
import squaresheet.formula.Node.Operator;

/** Walks over trees and makes changed ones. */
final class Trees {

  private Trees() {}

  /** Shows every part, the whole before its parts, from left to right. */
  static void walk(Node node, Consumer<Node> visitor) {
    visitor.accept(node);
    for (Node part : node.parts()) {
      walk(part, visitor);
    }
  }

  /** Whether the tree calls the function. */
  static boolean calls(Node node, String function) {
    return (node instanceof Node.Call call && call.function().equals(function))
        || node.parts().stream().anyMatch(part -> calls(part, function));
  }

  /** The same part made of other parts. */
  static Node with(Node node, List<Node> parts) {
    if (node instanceof Node.Binary binary) {
      return new Node.Binary(binary.operator(), parts.get(0), parts.get(1), binary.at());
    }
    if (node instanceof Node.Unary unary) {
      return new Node.Unary(unary.sign(), parts.get(0), unary.at());
    }
    if (node instanceof Node.Call call) {
      return new Node.Call(call.function(), parts, call.at());
    }
    if (node instanceof Node.Applied applied) {
      return new Node.Applied(parts.get(0), parts.subList(1, parts.size()), applied.at());
    }
    return node;
  }

  static Node moved(Node node, int rows, int columns) {
    if (node instanceof Node.Reference reference) {
      return moved(reference, rows, columns);
    }
    if (node instanceof Node.Array || node.parts().isEmpty()) {
      return node;
    }
    return with(
        node, node.parts().stream().map(part -> moved(part, rows, columns)).toList());
  }

  private static Node moved(Node.Reference reference, int rows, int columns) {
    boolean wholeColumns = reference.extent() == Extent.COLUMNS;
    boolean wholeRows = reference.extent() == Extent.ROWS;
    int down = wholeColumns ? 0 : rows;
    int right = wholeRows ? 0 : columns;
    Corner first = moved(reference.first(), down, right);
    Corner last = moved(reference.last(), down, right);
    if (first == null || last == null) {
      return new Node.Fault("#REF!", reference.at());
    }
    return new Node.Reference(reference.sheet(), first, last, reference.extent(), reference.at());
  }

  private static Corner moved(Corner corner, int rows, int columns) {
    int row = corner.row() + (corner.rowFixed() ? 0 : rows);
    int column = corner.column() + (corner.columnFixed() ? 0 : columns);
    boolean onSheet =
        row >= 0 && row < References.ROWS && column >= 0 && column < References.COLUMNS;
    return onSheet ? new Corner(row, corner.rowFixed(), column, corner.columnFixed()) : null;
  }

  /**
   * The tree with its leaves spelled otherwise.
   *
   * @param many whether this part stands where many values are taken
   * @param each whether operators here work element by element
   */
  static Node respelled(Node node, Respelling respelling, boolean many, boolean each) {
    if (node instanceof Node.Name name) {
      return respelling.name(name, many || each);
    }
    if (node instanceof Node.Reference reference) {
      return respelling.reference(reference, many || each);
    }
    if (node instanceof Node.Array || node.parts().isEmpty()) {
      return node;
    }
    List<Node> parts = new ArrayList<>();
    for (int i = 0; i < node.parts().size(); i++) {
      Node part = node.parts().get(i);
      parts.add(respelled(part, respelling, takesMany(node, i), each || takesEach(node, i)));
    }
    return with(node, parts);
  }

  /** Whether a part takes many values from its part of that number. */
  static boolean takesMany(Node node, int part) {
    if (node instanceof Node.Call call) {
      Spec spec = Catalog.get(call.function());
      return spec != null && spec.takes(part) != 's';
    }
    return node instanceof Node.Binary binary
        && binary.operator().strength() >= Operator.UNION.strength();
  }

  /** Whether a part computes its part of that number element by element. */
  static boolean takesEach(Node node, int part) {
    if (!(node instanceof Node.Call call)) {
      return false;
    }
    Spec spec = Catalog.get(call.function());
    return spec != null && spec.takes(part) == 'a';
  }
}
