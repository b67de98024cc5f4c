package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.formula.Node.Operator;

/**
 * The parts of a formula that turn from one value to another at a limit of something it asks for, such as a pitch: comparisons,
 * conditions of sums and counts, lookups and roundings of it.
 *
 * @param of whether a name or reference is what is asked about
 */
record Decisions(Predicate<Node> of) {

  private static final Set<Operator> COMPARE = Set.of(
      Operator.EQUAL,
      Operator.UNEQUAL,
      Operator.LESS,
      Operator.AT_MOST,
      Operator.MORE,
      Operator.AT_LEAST);
  private static final Set<String> LOOK_UP =
      Set.of("MATCH", "XMATCH", "LOOKUP", "VLOOKUP", "HLOOKUP", "XLOOKUP");
  private static final Set<String> ROUND = Set.of(
      "INT", "TRUNC", "ROUND", "ROUNDUP", "ROUNDDOWN", "MROUND", "FLOOR", "CEILING", "EVEN", "ODD");
  private static final Set<String> ON_ONE = Set.of("COUNTIF", "SUMIF", "AVERAGEIF");
  private static final Set<String> ON_PAIRS = Set.of("SUMIFS", "AVERAGEIFS", "MAXIFS", "MINIFS");

  List<Node> in(Node tree) {
    List<Node> parts = new ArrayList<>();
    Trees.walk(tree, node -> decisions(node).forEach(parts::add));
    return List.copyOf(parts);
  }

  private Stream<Node> decisions(Node node) {
    if (node instanceof Node.Binary binary && COMPARE.contains(binary.operator())) {
      return (follows(binary.left()) && isFree(binary.right()))
              || (follows(binary.right()) && isFree(binary.left()))
          ? Stream.of(node)
          : Stream.empty();
    }
    return node instanceof Node.Call call ? calls(call) : Stream.empty();
  }

  private Stream<Node> calls(Node.Call call) {
    List<Node> given = call.arguments();
    boolean first = !given.isEmpty() && follows(given.get(0));
    if (LOOK_UP.contains(call.function()) || ROUND.contains(call.function())) {
      return first && given.stream().skip(1).allMatch(this::isFree)
          ? Stream.of(call)
          : Stream.empty();
    }
    if (ON_ONE.contains(call.function())) {
      return conditions(call, 0, Math.min(2, given.size()));
    }
    return call.function().equals("COUNTIFS")
        ? conditions(call, 0, given.size())
        : ON_PAIRS.contains(call.function()) ? conditions(call, 1, given.size()) : Stream.empty();
  }

  /** Each condition on a range by itself, as a count. */
  private Stream<Node> conditions(Node.Call call, int from, int to) {
    List<Node> given = call.arguments();
    return IntStream.iterate(from, at -> at + 1 < to, at -> at + 2)
        .filter(at -> follows(given.get(at)) && isFree(given.get(at + 1)))
        .mapToObj(at -> new Node.Call("COUNTIFS", given.subList(at, at + 2), call.at()));
  }

  /** Whether the part is worked out from what is asked about and from nothing else. */
  boolean follows(Node part) {
    List<Node> leaves = leaves(part);
    return !leaves.isEmpty() && leaves.stream().allMatch(of);
  }

  private boolean isFree(Node part) {
    return leaves(part).stream().noneMatch(of);
  }

  private static List<Node> leaves(Node part) {
    List<Node> leaves = new ArrayList<>();
    Trees.walk(part, node -> {
      if (node instanceof Node.Name
          || node instanceof Node.Reference
          || node instanceof Node.Table) {
        leaves.add(node);
      }
    });
    return leaves;
  }
}
