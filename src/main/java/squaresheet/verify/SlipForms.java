package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Node.Operator;
import squaresheet.formula.Node.Span;

/** A rule as it reads after each of the slips that people make when they edit a formula. */
final class SlipForms {

  private final UnaryOperator<String> label;

  private SlipForms(UnaryOperator<String> label) {
    this.label = label;
  }

  /**
   * A slip.
   *
   * @param formula the rule with the slip
   * @param words what the slip is
   */
  record Slip(Formula formula, String words) {}

  /** A part after a slip. */
  private record Slipped(Node node, String words) {}

  /** Every known slip on the formula; names are called by their labels. */
  static Stream<Slip> of(Node tree, UnaryOperator<String> label) {
    return new SlipForms(label)
        .anywhere(tree)
        .map(slip -> new Slip(Formula.of(slip.node()), slip.words()));
  }

  /** The slips on this part itself, then those on its parts. */
  private Stream<Slipped> anywhere(Node node) {
    Stream<Slipped> inside = IntStream.range(0, node.parts().size()).boxed().flatMap(i -> anywhere(
            node.parts().get(i))
        .map(slip -> new Slipped(with(node, i, slip.node()), slip.words())));
    return Stream.concat(here(node), inside);
  }

  private static Node with(Node node, int part, Node other) {
    List<Node> parts = new ArrayList<>(node.parts());
    parts.set(part, other);
    if (node instanceof Node.Binary binary) {
      return new Node.Binary(binary.operator(), parts.get(0), parts.get(1), Span.NONE);
    }
    if (node instanceof Node.Unary unary) {
      return new Node.Unary(unary.sign(), parts.get(0), Span.NONE);
    }
    return node instanceof Node.Call call ? new Node.Call(call.function(), parts, Span.NONE) : node;
  }

  private Stream<Slipped> here(Node node) {
    if (node instanceof Node.Binary binary) {
      return switch (binary.operator()) {
        case TIMES -> times(binary);
        case OVER -> over(binary);
        case PLUS -> plus(binary);
        case MINUS -> minus(binary);
        default -> Stream.empty();
      };
    }
    return node instanceof Node.Call call ? call(call) : Stream.empty();
  }

  private Stream<Slipped> times(Node.Binary it) {
    return Stream.of(
        new Slipped(it.left(), say(it.right()) + " left out"),
        new Slipped(it.right(), say(it.left()) + " left out"),
        new Slipped(binary(Operator.TIMES, it, it.right()), say(it.right()) + " taken twice"),
        new Slipped(binary(Operator.TIMES, it, it.left()), say(it.left()) + " taken twice"),
        new Slipped(
            precedence(it), "brackets lost, so that " + say(it.right()) + " is not a factor"));
  }

  /** {@code a*(1+b)} without its brackets. */
  private static Node precedence(Node.Binary it) {
    return it.right() instanceof Node.Binary sum && sum.operator() == Operator.PLUS
        ? binary(Operator.PLUS, binary(Operator.TIMES, it.left(), sum.left()), sum.right())
        : it;
  }

  private Stream<Slipped> over(Node.Binary it) {
    return Stream.of(
        new Slipped(it.left(), "the division by " + say(it.right()) + " left out"),
        new Slipped(
            binary(Operator.OVER, it, it.right()), "divided by " + say(it.right()) + " twice"),
        new Slipped(
            binary(Operator.TIMES, it.left(), it.right()),
            "multiplied with " + say(it.right()) + " instead of divided by it"));
  }

  private Stream<Slipped> plus(Node.Binary it) {
    return Stream.of(
        new Slipped(
            binary(Operator.MINUS, it.left(), it.right()),
            say(it.right()) + " taken off instead of added"),
        new Slipped(it.left(), say(it.right()) + " left out"),
        new Slipped(it.right(), say(it.left()) + " left out"),
        new Slipped(binary(Operator.PLUS, it, it.right()), say(it.right()) + " added twice"));
  }

  private Stream<Slipped> minus(Node.Binary it) {
    return Stream.of(
        new Slipped(
            binary(Operator.PLUS, it.left(), it.right()),
            say(it.right()) + " added instead of taken off"),
        new Slipped(it.left(), say(it.right()) + " not taken off"));
  }

  private Stream<Slipped> call(Node.Call it) {
    return switch (it.function()) {
      case "ROUNDUP" ->
        Stream.of(
            new Slipped(rounded("ROUNDDOWN", it), "rounded down instead of up"),
            new Slipped(rounded("ROUND", it), "rounded to the nearest instead of up"),
            new Slipped(it.arguments().get(0), "not rounded up to whole packs"));
      case "IF" ->
        it.arguments().size() < 3
            ? Stream.empty()
            : Stream.of(
                new Slipped(it.arguments().get(1), say(it.arguments().get(0)) + " taken as true"),
                new Slipped(it.arguments().get(2), say(it.arguments().get(0)) + " taken as false"));
      case "SQRT" ->
        Stream.of(new Slipped(
            unsquared(it.arguments().get(0)), "1 + rise/12 instead of the root of the squares"));
      default -> Stream.empty();
    };
  }

  private static Node rounded(String function, Node.Call it) {
    return new Node.Call(function, it.arguments(), Span.NONE);
  }

  /** {@code 1+(a/12)^2} without the power. */
  private static Node unsquared(Node node) {
    if (node instanceof Node.Binary sum
        && sum.right() instanceof Node.Binary power
        && power.operator() == Operator.POWER) {
      return binary(sum.operator(), sum.left(), power.left());
    }
    return node;
  }

  private static Node binary(Operator operator, Node left, Node right) {
    return new Node.Binary(operator, left, right, Span.NONE);
  }

  /** A part in words: a name by its label, anything else as it is written. */
  private String say(Node node) {
    return node instanceof Node.Name name
        ? label.apply(name.name())
        : Formula.of(node).toString();
  }
}
