package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import squaresheet.formula.Node.Operator;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;

/**
 * Evaluates a tree over intervals. The result holds every value the formula can take; it may be wider than need be where
 * one reading goes in twice. What cannot be followed over an interval gives none.
 */
final class IntervalWalk {

  /** Functions that never fall while their first number rises, the others held. */
  private static final Set<String> RISING = Set.of(
      "ROUND",
      "ROUNDUP",
      "ROUNDDOWN",
      "CEILING",
      "FLOOR",
      "CEILING.MATH",
      "FLOOR.MATH",
      "MROUND",
      "INT",
      "TRUNC",
      "SQRT",
      "EXP",
      "LN",
      "LOG10",
      "ATAN",
      "RADIANS",
      "DEGREES",
      "SIGN");
  /** Functions that turn back: where they rise (or, for COS, fall) all the way. */
  private static final Map<String, Interval> RISING_WITHIN = Map.of(
      "SIN", new Interval(-Math.PI / 2, Math.PI / 2),
      "TAN", new Interval(-1.57, 1.57),
      "COS", new Interval(0, Math.PI));

  /** Carries nothing but the fact that an interval cannot be followed. */
  static final class NotFollowed extends RuntimeException {
    private static final long serialVersionUID = 1;

    NotFollowed() {
      super(null, null, false, false);
    }
  }

  final Scope scope;
  private final Function<String, Optional<Interval>> readings;

  private IntervalWalk(Scope scope, Function<String, Optional<Interval>> readings) {
    this.scope = scope;
    this.readings = readings;
  }

  /** The interval of a formula, where readings are known by the spelling of their cell or by their name. */
  static Optional<Interval> of(
      Formula formula, Scope scope, Function<String, Optional<Interval>> readings) {
    try {
      return Optional.of(new IntervalWalk(scope, readings).range(formula.tree()));
    } catch (NotFollowed | IllegalArgumentException none) {
      return Optional.empty();
    }
  }

  /** Whether a reading goes into a formula, or may go in where that cannot be told. */
  static boolean isTouched(
      Formula formula, Scope scope, Function<String, Optional<Interval>> readings) {
    try {
      return new IntervalWalk(scope, readings).isTouched(formula.tree());
    } catch (NotFollowed | IllegalArgumentException unknown) {
      return true;
    }
  }

  Interval range(Node node) {
    if (node instanceof Node.Number number) {
      return Interval.of(number.value());
    }
    if (node instanceof Node.Reference reference && reference.isCell()) {
      return cell(address(reference));
    }
    if (node instanceof Node.Name name) {
      return name(name);
    }
    if (node instanceof Node.Unary unary) {
      return unary(unary);
    }
    if (node instanceof Node.Binary binary
        && binary.operator().strength() >= Operator.PLUS.strength()) {
      return binary(binary);
    }
    return node instanceof Node.Call call ? call(call) : exact(node);
  }

  private Address address(Node.Reference reference) {
    String sheet = reference.sheet().isEmpty()
        ? scope.here().map(Address::sheet).orElse("")
        : reference.sheet();
    return new Address(sheet, Evaluation.ref(reference.first()));
  }

  Interval cell(Address cell) {
    return readings.apply(cell.toString()).orElseGet(() -> number(scope.cell(cell)));
  }

  private Interval name(Node.Name name) {
    Optional<Interval> known = readings.apply(name.name());
    if (known.isPresent()) {
      return known.get();
    }
    Optional<Node> defined = scope.defined(name);
    return defined.isPresent() ? range(defined.get()) : number(scope.name(name.name()));
  }

  static Interval number(Value value) {
    if (value instanceof Value.Number number) {
      return Interval.of(number.value());
    }
    if (value instanceof Value.Blank) {
      return Interval.of(0);
    }
    throw new NotFollowed();
  }

  /** A part that no reading goes into. */
  private Interval exact(Node node) {
    return number(untouched(node));
  }

  private Value untouched(Node node) {
    if (isTouched(node)) {
      throw new NotFollowed();
    }
    return Formula.of(node).evaluate(scope);
  }

  /** Whether a reading goes into a part. */
  boolean isTouched(Node node) {
    boolean[] touched = {false};
    Trees.walk(node, part -> touched[0] |= isReading(part));
    return touched[0];
  }

  private boolean isReading(Node node) {
    if (node instanceof Node.Name name) {
      return readings.apply(name.name()).isPresent()
          || scope.defined(name).filter(this::isTouched).isPresent();
    }
    return node instanceof Node.Table
        || (node instanceof Node.Reference reference
            && cells(reference).stream()
                .anyMatch(cell -> readings.apply(cell.toString()).isPresent()));
  }

  List<Address> cells(Node.Reference reference) {
    Address first = address(reference);
    Block block = reference.block();
    if ((long) block.rows() * block.columns() > 10_000) {
      throw new NotFollowed();
    }
    List<Address> cells = new ArrayList<>();
    for (int i = 0; i < block.rows() * block.columns(); i++) {
      cells.add(
          new Address(first.sheet(), block.first().plus(i / block.columns(), i % block.columns())));
    }
    return cells;
  }

  private Interval unary(Node.Unary unary) {
    Interval operand = range(unary.operand());
    return switch (unary.sign()) {
      case MINUS -> operand.negated();
      case PERCENT -> operand.times(Interval.of(0.01));
      case PLUS, AT -> operand;
    };
  }

  private Interval binary(Node.Binary node) {
    Interval left = range(node.left());
    Interval right = range(node.right());
    return switch (node.operator()) {
      case PLUS -> left.plus(right);
      case MINUS -> left.plus(right.negated());
      case TIMES -> left.times(right);
      case OVER -> left.times(divisor(right));
      case POWER -> power(left, right);
      default -> throw new NotFollowed();
    };
  }

  private static Interval divisor(Interval divisor) {
    if (divisor.contains(0)) {
      throw new NotFollowed();
    }
    return divisor.inverted();
  }

  private static Interval power(Interval base, Interval exponent) {
    if (!exponent.isExact()) {
      throw new NotFollowed();
    }
    double power = exponent.low();
    boolean even = power == 2 || power == 4;
    if ((base.low() < 0 && !even) || (base.contains(0) && power <= 0)) {
      throw new NotFollowed();
    }
    Interval ends = new Interval(
        Math.min(Math.pow(base.low(), power), Math.pow(base.high(), power)),
        Math.max(Math.pow(base.low(), power), Math.pow(base.high(), power)));
    return base.contains(0) ? ends.with(Interval.of(0)) : ends;
  }

  private Interval call(Node.Call call) {
    String function = call.function();
    if (RISING.contains(function) || RISING_WITHIN.containsKey(function)) {
      return rising(call);
    }
    return switch (function) {
      case "SUM" -> all(call).stream().reduce(Interval.of(0), Interval::plus);
      case "MIN" -> new Interval(least(call, Interval::low), least(call, Interval::high));
      case "MAX" -> new Interval(-least(call, it -> -it.low()), -least(call, it -> -it.high()));
      case "AVERAGE" -> {
        List<Interval> all = all(call);
        yield all.stream()
            .reduce(Interval.of(0), Interval::plus)
            .times(Interval.of(1.0 / Math.max(1, all.size())));
      }
      case "ABS" -> absolute(range(call.arguments().get(0)));
      case "IF" -> choice(call);
      case "SUMPRODUCT", "SUMIF", "SUMIFS", "INDEX" -> new IntervalColumns(this).of(call);
      case "IFERROR", "IFNA" -> range(call.arguments().get(0));
      default -> exact(call);
    };
  }

  private double least(Node.Call call, Function<Interval, Double> end) {
    return all(call).stream().mapToDouble(end::apply).min().orElse(0);
  }

  private static Interval absolute(Interval range) {
    double far = Math.max(Math.abs(range.low()), Math.abs(range.high()));
    double near = Math.min(Math.abs(range.low()), Math.abs(range.high()));
    return new Interval(range.contains(0) ? 0 : near, far);
  }

  private Interval rising(Node.Call call) {
    Interval first = range(call.arguments().get(0));
    double[] ends = {first.low(), first.high()};
    Interval within = RISING_WITHIN.get(call.function());
    if (within != null && !(within.contains(first.low()) && within.contains(first.high()))) {
      return exact(call);
    }
    Operation operation =
        Operation.find(call.function(), call.arguments().size()).orElseThrow(NotFollowed::new);
    double[] numbers = new double[call.arguments().size()];
    for (int i = 1; i < numbers.length; i++) {
      Interval other = range(call.arguments().get(i));
      if (!other.isExact()) {
        throw new NotFollowed();
      }
      numbers[i] = other.low();
    }
    try {
      numbers[0] = ends[0];
      double one = operation.body().apply(numbers);
      numbers[0] = ends[1];
      double other = operation.body().apply(numbers);
      return Interval.of(one).with(Interval.of(other));
    } catch (Signal outside) {
      throw new NotFollowed();
    }
  }

  /** The intervals of all arguments, those of a block cell by cell; texts and blanks in cells do not count. */
  private List<Interval> all(Node.Call call) {
    List<Interval> all = new ArrayList<>();
    call.arguments().forEach(argument -> all.addAll(many(argument)));
    return all;
  }

  private List<Interval> many(Node node) {
    if (node instanceof Node.Reference reference) {
      List<Interval> all = new ArrayList<>();
      for (Address cell : cells(reference)) {
        Value value = scope.cell(cell);
        if (value instanceof Value.Number || readings.apply(cell.toString()).isPresent()) {
          all.add(cell(cell));
        } else if (!(value instanceof Value.Blank || value instanceof Value.Text)) {
          throw new NotFollowed();
        }
      }
      return all;
    }
    if (node instanceof Node.Name name && readings.apply(name.name()).isEmpty()) {
      return named(name);
    }
    return List.of(range(node));
  }

  private List<Interval> named(Node.Name name) {
    Optional<Node> defined = scope.defined(name);
    if (defined.isPresent()) {
      return many(defined.get());
    }
    Value value = scope.names(name.name());
    return value instanceof Value.Matrix matrix
        ? matrix.cells().stream().map(IntervalWalk::number).toList()
        : List.of(number(value));
  }

  private Interval choice(Node.Call call) {
    Optional<Boolean> holds = holds(call.arguments().get(0));
    Node then = call.arguments().get(1);
    if (call.arguments().size() < 3) {
      throw new NotFollowed();
    }
    Node otherwise = call.arguments().get(2);
    if (holds.isPresent()) {
      return range(holds.get() ? then : otherwise);
    }
    return range(then).with(range(otherwise));
  }

  /** Whether a condition holds over the whole interval, or fails over the whole of it; empty where it may do either. */
  private Optional<Boolean> holds(Node condition) {
    if (!isTouched(condition)) {
      return Optional.of(isTrue(Formula.of(condition).evaluate(scope)));
    }
    if (condition instanceof Node.Call call && call.function().equals("NOT")) {
      return holds(call.arguments().get(0)).map(it -> !it);
    }
    if (condition instanceof Node.Call call && call.function().matches("AND|OR")) {
      return joined(call.arguments(), call.function().equals("OR"));
    }
    return condition instanceof Node.Binary binary
            && binary.operator().strength() == Operator.EQUAL.strength()
        ? compared(binary)
        : Optional.empty();
  }

  private static boolean isTrue(Value value) {
    return value instanceof Value.Truth truth ? truth.value() : number(value).low() != 0;
  }

  /** Of conditions joined by OR one that holds decides, of those joined by AND one that fails. */
  private Optional<Boolean> joined(List<Node> conditions, boolean deciding) {
    List<Optional<Boolean>> all = conditions.stream().map(this::holds).toList();
    if (all.contains(Optional.of(deciding))) {
      return Optional.of(deciding);
    }
    return all.stream().allMatch(Optional::isPresent) ? Optional.of(!deciding) : Optional.empty();
  }

  private Optional<Boolean> compared(Node.Binary binary) {
    if (binary.right() instanceof Node.Text text) {
      Value any = Value.of(range(binary.left()).low());
      return Optional.of(Comparison.holds(binary.operator(), any, new Value.Text(text.value())));
    }
    Interval left = range(binary.left());
    Interval right = range(binary.right());
    boolean decided = (left.isExact() && right.isExact())
        || left.high() < right.low()
        || right.high() < left.low();
    return decided
        ? Optional.of(Comparison.holds(
            binary.operator(), new Value.Number(left.low()), new Value.Number(right.low())))
        : Optional.empty();
  }
}
