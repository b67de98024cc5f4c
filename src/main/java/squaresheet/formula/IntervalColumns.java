package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;

/** Functions over whole columns, followed over intervals: which rows count must not hang on a reading. */
final class IntervalColumns {

  private final IntervalWalk walk;

  IntervalColumns(IntervalWalk walk) {
    this.walk = walk;
  }

  Interval of(Node.Call call) {
    if (!walk.isTouched(call)) {
      return IntervalWalk.number(Formula.of(call).evaluate(walk.scope));
    }
    List<Node> arguments = call.arguments();
    return switch (call.function()) {
      case "SUMPRODUCT" -> products(arguments);
      case "SUMIF" ->
        sum(
            arguments.get(arguments.size() - 1 - (arguments.size() == 2 ? 1 : 0)),
            arguments.subList(0, 2));
      case "SUMIFS" -> sum(arguments.get(0), arguments.subList(1, arguments.size()));
      default -> picked(arguments);
    };
  }

  /** The sum of the cells in whose rows every condition holds. */
  private Interval sum(Node summed, List<Node> conditions) {
    List<Address> cells = cells(summed);
    Interval sum = Interval.of(0);
    for (int i = 0; i < cells.size(); i++) {
      if (counts(conditions, i)) {
        sum = sum.plus(counted(cells.get(i)));
      }
    }
    return sum;
  }

  private boolean counts(List<Node> conditions, int row) {
    List<Node> one = new ArrayList<>();
    for (int i = 0; i < conditions.size(); i += 2) {
      List<Address> cells = cells(conditions.get(i));
      if (row >= cells.size()
          || walk.isTouched(conditions.get(i))
          || walk.isTouched(conditions.get(i + 1))) {
        throw new IntervalWalk.NotFollowed();
      }
      one.add(reference(cells.get(row)));
      one.add(conditions.get(i + 1));
    }
    Node.Call count = new Node.Call("COUNTIFS", one, Node.Span.NONE);
    return IntervalWalk.number(Formula.of(count).evaluate(walk.scope)).low() == 1;
  }

  private static Node reference(Address cell) {
    Node.Corner corner = Node.Corner.fixed(cell.ref());
    return new Node.Reference(cell.sheet(), corner, corner, Node.Extent.CELL, Node.Span.NONE);
  }

  /** A cell of a column, of which only numbers count. */
  private Interval counted(Address cell) {
    return walk.scope.cell(cell) instanceof Value.Text ? Interval.of(0) : walk.cell(cell);
  }

  /** The cell of a column that a row number picks out. */
  private Interval picked(List<Node> arguments) {
    if (arguments.size() != 2 || walk.isTouched(arguments.get(1))) {
      throw new IntervalWalk.NotFollowed();
    }
    double row =
        IntervalWalk.number(Formula.of(arguments.get(1)).evaluate(walk.scope)).low();
    List<Address> cells = cells(arguments.get(0));
    if (row < 1 || row > cells.size()) {
      throw new IntervalWalk.NotFollowed();
    }
    return walk.cell(cells.get((int) row - 1));
  }

  /** The cells of a column or row, given itself or by its name. */
  private List<Address> cells(Node node) {
    if (node instanceof Node.Reference reference) {
      Block block = reference.block();
      if (block.rows() == 1 || block.columns() == 1) {
        return walk.cells(reference);
      }
    }
    Optional<Node> defined =
        node instanceof Node.Name name ? walk.scope.defined(name) : Optional.empty();
    return cells(defined.orElseThrow(IntervalWalk.NotFollowed::new));
  }

  private Interval products(List<Node> arguments) {
    List<List<Interval>> columns = arguments.stream().map(this::column).toList();
    int size = columns.get(0).size();
    if (columns.stream().anyMatch(column -> column.size() != size)) {
      throw new IntervalWalk.NotFollowed();
    }
    Interval sum = Interval.of(0);
    for (int i = 0; i < size; i++) {
      Interval product = Interval.of(1);
      for (List<Interval> column : columns) {
        product = product.times(column.get(i));
      }
      sum = sum.plus(product);
    }
    return sum;
  }

  private List<Interval> column(Node node) {
    if (!walk.isTouched(node)) {
      Value value = Formula.of(node).evaluateArray(walk.scope);
      return value instanceof Value.Matrix matrix
          ? matrix.cells().stream().map(IntervalColumns::factor).toList()
          : List.of(factor(value));
    }
    if (node instanceof Node.Binary binary && binary.operator() == Node.Operator.TIMES) {
      return times(column(binary.left()), column(binary.right()));
    }
    return cells(node).stream().map(this::counted).toList();
  }

  private static List<Interval> times(List<Interval> one, List<Interval> other) {
    if (one.size() != other.size() && one.size() != 1 && other.size() != 1) {
      throw new IntervalWalk.NotFollowed();
    }
    List<Interval> products = new ArrayList<>();
    for (int i = 0; i < Math.max(one.size(), other.size()); i++) {
      products.add(one.get(one.size() == 1 ? 0 : i).times(other.get(other.size() == 1 ? 0 : i)));
    }
    return products;
  }

  private static Interval factor(Value value) {
    if (value instanceof Value.Truth truth) {
      return Interval.of(truth.value() ? 1 : 0);
    }
    return value instanceof Value.Text ? Interval.of(0) : IntervalWalk.number(value);
  }
}
