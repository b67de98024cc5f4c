package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import squaresheet.formula.Node;

/** Looks into formulas. */
final class Nodes {

  private Nodes() {}

  /** The part and all parts of its parts, the whole before its parts. */
  static Stream<Node> all(Node node) {
    return Stream.concat(Stream.of(node), node.parts().stream().flatMap(Nodes::all));
  }

  /** All parts of one type. */
  static <T extends Node> Stream<T> all(Node node, Class<T> type) {
    return all(node).filter(type::isInstance).map(type::cast);
  }

  static boolean any(Node node, Predicate<Node> test) {
    return all(node).anyMatch(test);
  }

  /** The call of one of these functions that the formula as a whole is, signs and brackets aside. */
  static Optional<Node.Call> root(Node tree, String... functions) {
    return tree instanceof Node.Call call && List.of(functions).contains(call.function())
        ? Optional.of(call)
        : Optional.empty();
  }

  /** The calls of one of these functions anywhere. */
  static Stream<Node.Call> calls(Node tree, String... functions) {
    List<String> wanted = List.of(functions);
    return all(tree, Node.Call.class).filter(call -> wanted.contains(call.function()));
  }

  /** Whether the part is a call of the function. */
  static boolean isCall(Node node, String... functions) {
    return root(node, functions).isPresent();
  }

  /** The terms of a sum, {@code a+b-c} as three; one where it is no sum. */
  static List<Node> terms(Node node) {
    return gather(node, Node.Operator.PLUS, Node.Operator.MINUS);
  }

  /** The factors and divisors of a product; one where it is none. */
  static List<Node> factors(Node node) {
    return gather(node, Node.Operator.TIMES, Node.Operator.OVER);
  }

  private static List<Node> gather(Node node, Node.Operator one, Node.Operator other) {
    if (node instanceof Node.Binary binary
        && (binary.operator() == one || binary.operator() == other)) {
      List<Node> all = new ArrayList<>(gather(binary.left(), one, other));
      all.addAll(gather(binary.right(), one, other));
      return all;
    }
    return List.of(node);
  }

  /** The smallest parts in which two formulas differ, in pairs; empty where they are alike. */
  static List<Difference> differences(Node one, Node other) {
    if (one.equals(other)) {
      return List.of();
    }
    boolean alike = sameKind(one, other)
        && one.parts().size() == other.parts().size()
        && !one.parts().isEmpty();
    if (!alike) {
      return List.of(new Difference(one, other));
    }
    List<Difference> all = new ArrayList<>();
    for (int i = 0; i < one.parts().size(); i++) {
      all.addAll(differences(one.parts().get(i), other.parts().get(i)));
    }
    return all;
  }

  private static boolean sameKind(Node one, Node other) {
    if (one instanceof Node.Binary a && other instanceof Node.Binary b) {
      return a.operator() == b.operator();
    }
    if (one instanceof Node.Unary a && other instanceof Node.Unary b) {
      return a.sign() == b.sign();
    }
    return one instanceof Node.Call a
        && other instanceof Node.Call b
        && a.function().equals(b.function());
  }

  /**
   * Two parts at the same place of two formulas.
   *
   * @param wanted of the formula that the neighbours have
   * @param found of the formula in question
   */
  record Difference(Node wanted, Node found) {}
}
