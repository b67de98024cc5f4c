package squaresheet.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.units.Unit;

/** Tells how a formula came to its value: the rule, what went in, the steps, the rounding. */
final class Explainer {

  private static final int CENTS = 2;

  private static final Map<String, String> ROUNDINGS = Map.of(
      "ROUNDUP", "rounded up",
      "ROUNDDOWN", "rounded down",
      "ROUND", "rounded to the nearest",
      "CEILING", "rounded up to a multiple",
      "FLOOR", "rounded down to a multiple",
      "CEILING.MATH", "rounded up to a multiple",
      "FLOOR.MATH", "rounded down to a multiple",
      "MROUND", "rounded to the nearest multiple",
      "INT", "rounded down to a whole number",
      "TRUNC", "cut to a whole number");
  /** Steps shown; a longer formula is shown by its first ones. */
  private static final int STEPS = 60;

  private static final double WHISKER = 1e-6;

  private final Scope scope;
  private final Labels labels;
  private final List<String> lines = new ArrayList<>();
  private final Set<String> inputs = new LinkedHashSet<>();

  private Explainer(Scope scope, Labels labels) {
    this.scope = scope;
    this.labels = labels;
  }

  static List<String> explain(String name, Formula formula, Scope scope, Labels labels) {
    Explainer explainer = new Explainer(scope, labels);
    explainer.inputs(formula.tree());
    List<String> all = new ArrayList<>();
    all.add(name + " = " + formula);
    explainer.inputs.forEach(input -> all.add("  " + input));
    explainer.step(formula.tree());
    explainer.lines.stream().limit(STEPS).forEach(line -> all.add("  " + line));
    if (explainer.lines.size() > STEPS) {
      all.add("  and " + (explainer.lines.size() - STEPS) + " steps more");
    }
    all.add(name + " is " + explainer.shown(formula.tree()));
    return all;
  }

  private Value value(Node node) {
    return Formula.of(node).evaluate(scope);
  }

  private Optional<Unit> unit(Node node) {
    return Inference.of(Formula.of(node), scope, labels, Optional.empty()).unit();
  }

  private String shown(Node node) {
    return shown(value(node), node);
  }

  private String shown(Value value, Node node) {
    if (value instanceof Value.Number number) {
      String digits = Coercion.general(Roundings.nearest(number.value(), decimals(number.value())));
      return unit(node).map(unit -> unit.show(digits)).orElse(digits);
    }
    return Explainer.plain(value);
  }

  /** Enough decimals to show six digits, and cents. */
  private static int decimals(double number) {
    double size = Math.abs(number);
    return size < 1e-6 ? 12 : Math.max(CENTS, 5 - (int) Math.floor(Math.log10(size)));
  }

  static String plain(Value value) {
    if (value instanceof Value.Text text) {
      return '"' + text.value() + '"';
    }
    if (value instanceof Value.Fault fault) {
      return "the error " + fault.code();
    }
    if (value instanceof Value.NotChecked unknown) {
      return "not checked: " + unknown.reason();
    }
    if (value instanceof Value.Matrix matrix) {
      return matrix.cells().size() + " values";
    }
    return value instanceof Value.Blank ? "blank" : Coercion.text(value);
  }

  private void inputs(Node node) {
    if (node instanceof Node.Reference reference && reference.isCell()) {
      inputs.add(Printer.print(node, false) + " is " + shownInput(node));
    } else if (node instanceof Node.Reference) {
      inputs.add(Printer.print(node, false) + " holds " + held(node));
    } else if (node instanceof Node.Name name) {
      inputs.add(name(name));
    }
    node.parts().forEach(this::inputs);
  }

  /** An empty cell shows as blank, one that cannot be worked out with the reason. */
  private String shownInput(Node node) {
    try {
      return shown(new Evaluation(scope, Plan.of(node)).scalar(node), node);
    } catch (Signal signal) {
      return shown(signal.value(), node);
    }
  }

  private String name(Node.Name name) {
    String origin = scope
        .defined(name)
        .map(it -> Printer.print(it, false))
        .orElseGet(() -> labels.origin(name.name()));
    String from = origin.isEmpty() ? "" : ", from " + origin;
    Value all = scope.defined(name).isPresent() ? value(name) : scope.names(name.name());
    String held =
        all instanceof Value.Matrix ? " holds " + numbers(all) : " is " + shown(all, name);
    return name.name() + held + from;
  }

  private String held(Node node) {
    return numbers(Formula.of(node).evaluateArray(scope));
  }

  private static String numbers(Value value) {
    if (!(value instanceof Value.Matrix matrix)) {
      return plain(value);
    }
    long numbers =
        matrix.cells().stream().filter(Value.Number.class::isInstance).count();
    return numbers + (numbers == 1 ? " number" : " numbers") + " in "
        + matrix.cells().size() + " cells";
  }

  /** Tells the parts first, then this part with its parts' values in place. */
  private void step(Node node) {
    if (node instanceof Node.Call call) {
      stepOf(call);
    } else if (node instanceof Node.Unary unary) {
      step(unary.operand());
    } else if (node instanceof Node.Binary binary
        && binary.operator().strength() < Node.Operator.UNION.strength()) {
      if (binary.operator() == Node.Operator.TIMES && isWhisker(binary.right())) {
        step(binary.left());
        return;
      }
      step(binary.left());
      step(binary.right());
      lines.add(inserted(binary) + " = " + shown(binary));
    }
  }

  /**
   * Whether a part is worked out from typed numbers alone and is 1 but for a whisker: it only keeps a computer's spelling of
   * a whole number from being rounded away from it, and multiplies nothing that anybody counts.
   */
  private boolean isWhisker(Node node) {
    boolean typed = node instanceof Node.Binary binary
        && binary.left() instanceof Node.Number
        && binary.right() instanceof Node.Number;
    return typed
        && value(node) instanceof Value.Number number
        && number.value() != 1
        && Math.abs(number.value() - 1) < WHISKER;
  }

  private void stepOf(Node.Call call) {
    if (call.function().equals("IF")) {
      boolean then =
          Formula.of(call.arguments().get(0)).evaluate(scope).equals(new Value.Truth(true));
      step(call.arguments().get(0));
      int taken = then ? 1 : 2;
      if (taken < call.arguments().size()) {
        step(call.arguments().get(taken));
      }
      String why =
          UnitRules.spelled(call.arguments().get(0)) + (then ? " holds" : " does not hold");
      lines.add("IF: " + why + ", so " + shown(call));
      return;
    }
    call.arguments().forEach(this::step);
    String rounding = ROUNDINGS.getOrDefault(call.function(), "");
    lines.add(
        inserted(call) + " = " + shown(call) + (rounding.isEmpty() ? "" : " (" + rounding + ")"));
  }

  /** The part, spelled with the values of its own parts where these are numbers. */
  private String inserted(Node node) {
    List<Node> parts = new ArrayList<>();
    for (int i = 0; i < node.parts().size(); i++) {
      Node part = node.parts().get(i);
      boolean many = Trees.takesMany(node, i);
      parts.add(
          !many && value(part) instanceof Value.Number number ? number(number.value()) : part);
    }
    return UnitRules.spelled(Trees.with(node, parts));
  }

  private static Node number(double value) {
    double shown = Roundings.nearest(Math.abs(value), decimals(value));
    Node size = new Node.Number(shown, Node.Span.NONE);
    return value < 0 ? new Node.Unary(Node.Sign.MINUS, size, Node.Span.NONE) : size;
  }
}
