package squaresheet.formula;

import java.util.List;

/** The arguments of one call, evaluated when they are asked for. */
final class Arguments {

  private final Evaluation evaluation;
  private final List<Node> nodes;
  /** Values that stand in for nodes while an array is computed element by element; null elsewhere. */
  private final Value[] held;
  /** Whether this is part of something computed element by element, cells included. */
  private final boolean cells;

  Arguments(Evaluation evaluation, List<Node> nodes, Value[] held, boolean cells) {
    this.evaluation = evaluation;
    this.nodes = nodes;
    this.held = held;
    this.cells = cells;
  }

  Evaluation evaluation() {
    return evaluation;
  }

  int size() {
    return nodes.size();
  }

  /** Whether the argument is there and not left out. */
  boolean has(int index) {
    return index < nodes.size() && !(nodes.get(index) instanceof Node.Omitted);
  }

  Node node(int index) {
    return nodes.get(index);
  }

  /** One value, which may be a spreadsheet error. */
  Value value(int index) {
    if (held != null && held[index] != null) {
      return held[index];
    }
    return evaluation.scalar(nodes.get(index));
  }

  /** One value that is no spreadsheet error. */
  Value sound(int index) {
    return Coercion.sound(value(index));
  }

  double number(int index) {
    return Coercion.number(value(index));
  }

  /** A number, 0 where its place is left empty, and the other where it has no place. */
  double number(int index, double otherwise) {
    return index < size() ? number(index) : otherwise;
  }

  /** A number cut to a whole one. */
  int whole(int index) {
    double number = number(index);
    double cut = number < 0 ? Math.ceil(number) : Math.floor(number);
    if (Math.abs(cut) > Integer.MAX_VALUE) {
      throw Signal.NUMBER;
    }
    return (int) cut;
  }

  /** A whole number, 0 where its place is left empty, and the other where it has no place. */
  int whole(int index, int otherwise) {
    return index < size() ? whole(index) : otherwise;
  }

  boolean truth(int index) {
    return Coercion.truth(value(index));
  }

  /** A truth, FALSE where its place is left empty, and the other where it has no place. */
  boolean truth(int index, boolean otherwise) {
    return index < size() ? truth(index) : otherwise;
  }

  String text(int index) {
    return Coercion.text(value(index));
  }

  /** Many values. */
  Grid grid(int index) {
    if (held != null && held[index] != null) {
      return Grid.of(held[index]);
    }
    Node node = nodes.get(index);
    return cells ? evaluation.array(node) : evaluation.grid(node);
  }

  /** Many values, where operators work element by element. */
  Grid array(int index) {
    if (held != null && held[index] != null) {
      return Grid.of(held[index]);
    }
    return evaluation.array(nodes.get(index));
  }
}
