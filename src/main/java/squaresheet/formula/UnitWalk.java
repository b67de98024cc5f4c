package squaresheet.formula;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.formula.Node.Operator;
import squaresheet.formula.Node.Sign;
import squaresheet.formula.UnitRules.Doing;
import squaresheet.formula.UnitRules.Pair;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.units.Unit;

/** Carries units up a tree from what is known, and down it to what is not. */
final class UnitWalk {

  /** Functions that give a value of their first argument's unit. */
  private static final Set<String> FIRST = Set.of(
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
      "ABS",
      "MOD",
      "EVEN",
      "ODD",
      "LARGE",
      "SMALL",
      "N",
      "VALUE");
  /** Functions whose arguments are all of one unit, which they give. */
  private static final Set<String> ALIKE =
      Set.of("SUM", "MIN", "MAX", "AVERAGE", "MEDIAN", "IFERROR", "IFNA");

  /** Those of them that give one of their arguments as it is. */
  private static final Set<String> CHOOSING = Set.of("IFERROR", "IFNA");

  private static final Set<String> PLAIN = Set.of("SIN", "COS", "TAN", "SIGN");
  private static final Set<String> PICKED = Set.of("SUMIFS", "AVERAGEIFS", "MAXIFS", "MINIFS");
  /** Cells of a block whose units are compared; a table of a roof has far fewer rows. */
  private static final int LOOKED_AT = 2000;

  private final Scope scope;
  private final Labels labels;
  private final UnitRules rules = new UnitRules();
  private final Map<String, Unit> deduced = new LinkedHashMap<>();

  UnitWalk(Scope scope, Labels labels) {
    this.scope = scope;
    this.labels = labels;
  }

  UnitRules rules() {
    return rules;
  }

  Map<String, Unit> deduced() {
    return deduced;
  }

  Measure measure(Node node) {
    if (node instanceof Node.Number number) {
      return Measure.literal(number.value());
    }
    if (node instanceof Node.Name name) {
      return name(name);
    }
    if (node instanceof Node.Reference reference) {
      return reference(reference, false);
    }
    if (node instanceof Node.Table table) {
      return scope.table(table).map(it -> reference(it, false)).orElse(Measure.UNKNOWN);
    }
    if (node instanceof Node.Unary unary) {
      return unary(unary);
    }
    if (node instanceof Node.Binary binary) {
      return binary(binary);
    }
    return node instanceof Node.Call call ? call(call) : Measure.UNKNOWN;
  }

  private Measure name(Node.Name name) {
    Optional<Unit> known = labels.unit(name.name());
    if (known.isPresent()) {
      return Measure.of(known.get());
    }
    return scope
        .defined(name)
        .filter(Node.Reference.class::isInstance)
        .map(it -> reference((Node.Reference) it, false))
        .orElse(Measure.UNKNOWN);
  }

  /** The unit that the cells of a block share; where they are added together and share none, that is said. */
  private Measure reference(Node.Reference reference, boolean together) {
    String sheet = reference.sheet().isEmpty()
        ? scope.here().map(Address::sheet).orElse("")
        : reference.sheet();
    Block block = reference.block();
    Measure all = Measure.UNKNOWN;
    Node before = reference;
    long size = Math.min(LOOKED_AT, (long) block.rows() * block.columns());
    for (int i = 0; i < size; i++) {
      Address cell = new Address(
          sheet,
          block.first().plus(i % block.rows(), Math.min(i / block.rows(), block.columns() - 1)));
      Optional<Unit> unit = labels.unit(cell);
      if (unit.isPresent()) {
        Measure next = Measure.of(unit.get());
        if (!together && all.isKnown() && !all.equals(next)) {
          return Measure.UNKNOWN;
        }
        Node here = Formula.of(cell.ref().toString()).tree();
        all = all.isKnown()
            ? rules.alike(Doing.TOGETHER, new Pair(reference, before, all, here, next))
            : next;
        if (!all.isKnown()) {
          return all;
        }
        before = here;
      }
    }
    return all;
  }

  private Measure unary(Node.Unary unary) {
    Measure operand = measure(unary.operand());
    return switch (unary.sign()) {
      case PERCENT ->
        operand.isLiteral()
            ? Measure.literal(operand.literal().getAsDouble() / 100)
            : Literals.over(operand, 100);
      case MINUS ->
        operand.isLiteral() ? Measure.literal(-operand.literal().getAsDouble()) : operand;
      default -> operand;
    };
  }

  private Measure binary(Node.Binary binary) {
    Operator operator = binary.operator();
    if (operator.strength() >= Operator.UNION.strength()) {
      return measure(binary.left());
    }
    Measure left = measure(binary.left());
    Measure right = measure(binary.right());
    if (left.isLiteral() && right.isLiteral()) {
      return literal(operator, left.literal().getAsDouble(), right.literal().getAsDouble());
    }
    return switch (operator) {
      case PLUS, MINUS -> sum(binary, left, right);
      case TIMES -> rules.product(binary, left, right);
      case OVER -> rules.quotient(binary, left, right);
      case POWER -> power(left, right);
      case JOIN -> Measure.UNKNOWN;
      default -> compared(binary, left, right);
    };
  }

  /** Arithmetic on typed numbers makes a typed number: {@code 1-1E-9}, {@code 12*12}. */
  private static Measure literal(Operator operator, double left, double right) {
    double result =
        switch (operator) {
          case PLUS -> left + right;
          case MINUS -> left - right;
          case TIMES -> left * right;
          case OVER -> left / right;
          case POWER -> Math.pow(left, right);
          default -> Double.NaN;
        };
    return Double.isFinite(result) ? Measure.literal(result) : Measure.UNKNOWN;
  }

  private Measure sum(Node.Binary binary, Measure left, Measure right) {
    Doing doing = binary.operator() == Operator.PLUS ? Doing.ADD : Doing.SUBTRACT;
    return rules.alike(doing, new Pair(binary, left, right));
  }

  private Measure compared(Node.Binary binary, Measure left, Measure right) {
    if (!left.isLiteral() && !right.isLiteral()) {
      rules.alike(Doing.COMPARE, new Pair(binary, left, right));
    }
    return Measure.UNKNOWN;
  }

  private static Measure power(Measure base, Measure exponent) {
    if (base.isRatio()) {
      return Measure.RATIO;
    }
    if (!base.isKnown() || !exponent.isLiteral()) {
      return Measure.UNKNOWN;
    }
    double number = exponent.literal().getAsDouble();
    if (number == 0.5) {
      return root(base);
    }
    return number == Math.rint(number) && Math.abs(number) <= 4
        ? Measure.of(base.unit().get().power((int) number), base.scaled())
        : Measure.UNKNOWN;
  }

  private static Measure root(Measure measure) {
    try {
      return measure.isKnown()
          ? Measure.of(measure.unit().get().squareRoot(), measure.scaled())
          : Measure.UNKNOWN;
    } catch (IllegalArgumentException odd) {
      return Measure.UNKNOWN;
    }
  }

  private Measure call(Node.Call call) {
    List<Node> arguments = call.arguments();
    String function = call.function();
    if (FIRST.contains(function)) {
      return measure(arguments.get(0));
    }
    if (ALIKE.contains(function)) {
      return alike(CHOOSING.contains(function) ? Doing.CHOOSE : Doing.TOGETHER, call, arguments);
    }
    if (function.equals("IF")) {
      measure(arguments.get(0));
      return alike(Doing.CHOOSE, call, arguments.subList(1, arguments.size()));
    }
    if (function.equals("SUBTOTAL")) {
      return alike(Doing.TOGETHER, call, arguments.subList(1, arguments.size()));
    }
    if (PICKED.contains(function)) {
      return measure(arguments.get(0));
    }
    if (function.equals("SUMIF") || function.equals("AVERAGEIF")) {
      return measure(arguments.get(arguments.size() == 3 ? 2 : 0));
    }
    if (function.equals("SQRT")) {
      return root(measure(arguments.get(0)));
    }
    return other(call, arguments);
  }

  private Measure other(Node.Call call, List<Node> arguments) {
    if (call.function().equals("SUMPRODUCT")) {
      return products(call, arguments);
    }
    if (call.function().equals("CONVERT") && arguments.get(2) instanceof Node.Text text) {
      try {
        return Measure.of(Unit.parse(text.value()));
      } catch (IllegalArgumentException unknown) {
        return Measure.UNKNOWN;
      }
    }
    arguments.forEach(this::measure);
    return PLAIN.contains(call.function()) ? Measure.RATIO : Measure.UNKNOWN;
  }

  private Measure alike(Doing doing, Node.Call call, List<Node> arguments) {
    Measure all = Measure.UNKNOWN;
    Node before = call;
    for (Node argument : arguments) {
      Measure next = argument instanceof Node.Reference block && doing == Doing.TOGETHER
          ? reference(block, true)
          : measure(argument);
      if (all.isKnown() && next.isKnown()) {
        all = rules.alike(doing, new Pair(call, before, all, argument, next));
      } else if (next.isKnown()) {
        all = next;
      }
      before = next.isKnown() ? argument : before;
    }
    return all;
  }

  private Measure products(Node.Call call, List<Node> arguments) {
    Measure all = measure(arguments.get(0));
    Node whole = arguments.get(0);
    for (Node argument : arguments.subList(1, arguments.size())) {
      Node.Binary pair = new Node.Binary(Operator.TIMES, whole, argument, call.at());
      all = rules.product(pair, all, measure(argument));
      whole = pair;
    }
    return all;
  }

  /** Tells the parts of a tree whose unit is not known what it must be, for the whole to be in that unit. */
  void expect(Node node, Unit unit) {
    if (node instanceof Node.Name || node instanceof Node.Reference) {
      if (!measure(node).isKnown()) {
        deduced.putIfAbsent(Printer.print(node, false), unit);
      }
    } else if (node instanceof Node.Unary unary && unary.sign() != Sign.PERCENT) {
      expect(unary.operand(), unit);
    } else if (node instanceof Node.Call call) {
      expectOf(call, unit);
    } else if (node instanceof Node.Binary binary) {
      expectOf(binary, unit);
    }
  }

  private void expectOf(Node.Call call, Unit unit) {
    if (FIRST.contains(call.function()) || PICKED.contains(call.function())) {
      expect(call.arguments().get(0), unit);
    } else if (ALIKE.contains(call.function())) {
      call.arguments().forEach(argument -> expect(argument, unit));
    } else if (call.function().equals("IF")) {
      call.arguments().subList(1, call.arguments().size()).forEach(part -> expect(part, unit));
    }
  }

  private void expectOf(Node.Binary binary, Unit unit) {
    Measure left = measure(binary.left());
    Measure right = measure(binary.right());
    switch (binary.operator()) {
      case PLUS, MINUS -> {
        expect(binary.left(), unit);
        expect(binary.right(), unit);
      }
      case TIMES -> {
        left.unit().ifPresent(known -> expect(binary.right(), unit.over(known)));
        right.unit().ifPresent(known -> expect(binary.left(), unit.over(known)));
      }
      case OVER -> {
        right.unit().ifPresent(known -> expect(binary.left(), unit.times(known)));
        left.unit().ifPresent(known -> expect(binary.right(), known.over(unit)));
      }
      default -> {}
    }
  }
}
