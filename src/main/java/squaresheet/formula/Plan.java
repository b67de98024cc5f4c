package squaresheet.formula;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/** The arithmetic at the top of a part of a formula: a program, and the parts whose numbers it computes with. */
final class Plan {

  private final Node node;
  private final Program program;
  private final Node[] holes;

  private Plan(Node node, Program program, Node[] holes) {
    this.node = node;
    this.program = program;
    this.holes = holes;
  }

  /** A plan for every outermost part of the tree that is arithmetic. */
  static IdentityHashMap<Node, Plan> of(Node tree) {
    IdentityHashMap<Node, Plan> plans = new IdentityHashMap<>(4);
    add(tree, plans);
    return plans;
  }

  private static void add(Node node, IdentityHashMap<Node, Plan> plans) {
    if (!ProgramText.isArithmetic(node)) {
      node.parts().forEach(part -> add(part, plans));
      return;
    }
    List<Node> holes = new ArrayList<>();
    String text = ProgramText.write(node, holes);
    if (holes.size() <= Program.MOST) {
      plans.put(node, new Plan(node, Program.of(text, holes.size()), holes.toArray(Node[]::new)));
    }
    holes.forEach(hole -> hole.parts().forEach(part -> add(part, plans)));
  }

  /** The value, by the program where every part gives a number, and step by step where one does not. */
  Value run(Evaluation evaluation) {
    double[] numbers = new double[holes.length];
    for (int i = 0; i < holes.length; i++) {
      Node hole = holes[i];
      Value value =
          hole instanceof Node.Name name ? evaluation.named(name) : evaluation.scalar(hole);
      if (value instanceof Value.Number number) {
        numbers[i] = number.value();
      } else {
        Optional<Double> number = plain(value);
        if (number.isEmpty()) {
          return careful(evaluation);
        }
        numbers[i] = number.get();
      }
    }
    try {
      return new Value.Number(program.run(numbers));
    } catch (Signal signal) {
      return signal.fault();
    }
  }

  private static Optional<Double> plain(Value value) {
    if (value instanceof Value.Truth truth) {
      return Optional.of(truth.value() ? 1.0 : 0.0);
    }
    return value instanceof Value.Blank ? Optional.of(0.0) : Optional.empty();
  }

  private Value careful(Evaluation evaluation) {
    return node instanceof Node.Call call ? evaluation.call(call) : evaluation.operated(node);
  }
}
