package squaresheet.formula;

import java.util.List;

/** The arguments of one call, evaluated when they are asked for. */
final class Arguments {

  private final Evaluation evaluation;
  private final List<Node> nodes;
  /** Values that stand in for nodes while an array is computed element by element; null elsewhere. */
  private final Value[] held;

  Arguments(Evaluation evaluation, List<Node> nodes, Value[] held) {
    this.evaluation = evaluation;
    this.nodes = nodes;
    this.held = held;
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

  double number(int index, double otherwise) {
    return has(index) ? number(index) : otherwise;
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

  int whole(int index, int otherwise) {
    return has(index) ? whole(index) : otherwise;
  }

  boolean truth(int index) {
    return Coercion.truth(value(index));
  }

  boolean truth(int index, boolean otherwise) {
    return has(index) ? truth(index) : otherwise;
  }

  String text(int index) {
    return Coercion.text(value(index));
  }

  /** Many values. */
  Grid grid(int index) {
    if (held != null && held[index] != null) {
      return Grid.of(held[index]);
    }
    return evaluation.grid(nodes.get(index));
  }

  /** Many values, where operators work element by element. */
  Grid array(int index) {
    if (held != null && held[index] != null) {
      return Grid.of(held[index]);
    }
    return evaluation.array(nodes.get(index));
  }
}
