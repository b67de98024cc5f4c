package squaresheet.formula;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import squaresheet.formula.Node.Corner;
import squaresheet.formula.Node.Extent;
import squaresheet.formula.Node.Operator;
import squaresheet.formula.Node.Sign;
import squaresheet.formula.Node.Span;

/** Trees that jqwik makes up. */
final class Generated {

  private static final Span AT = Span.NONE;

  private Generated() {}

  /** Any tree that the grammar can spell. */
  static Arbitrary<Node> trees(int depth) {
    if (depth == 0) {
      return leaves();
    }
    Arbitrary<Node> parts = trees(depth - 1);
    return Arbitraries.oneOf(
        leaves(),
        binaries(
            parts,
            Operator.POWER,
            Operator.TIMES,
            Operator.OVER,
            Operator.PLUS,
            Operator.MINUS,
            Operator.JOIN,
            Operator.EQUAL,
            Operator.UNEQUAL,
            Operator.LESS,
            Operator.AT_MOST),
        unaries(parts, Sign.MINUS, Sign.PLUS, Sign.PERCENT, Sign.AT),
        calls(parts));
  }

  private static Arbitrary<Node> leaves() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().between(0, 1e12).map(it -> new Node.Number(it, AT)),
        Arbitraries.integers().between(0, 5000).map(it -> new Node.Number(it, AT)),
        Arbitraries.strings().ascii().ofMaxLength(6).map(it -> new Node.Text(it, AT)),
        Arbitraries.of(true, false).map(it -> new Node.Truth(it, AT)),
        Arbitraries.of("#REF!", "#N/A", "#DIV/0!").map(it -> new Node.Fault(it, AT)),
        Arbitraries.of("net_area", "waste_rate", "tax.rate", "Ärea_x")
            .map(it -> new Node.Name("", it, AT)),
        references(),
        unions());
  }

  private static Arbitrary<Node> references() {
    Arbitrary<String> sheets = Arbitraries.of("", "Planes", "Main roof", "It's", "R1");
    Arbitrary<Corner> corners = Combinators.combine(
            Arbitraries.integers().between(0, 40),
            Arbitraries.of(true, false),
            Arbitraries.integers().between(0, 60),
            Arbitraries.of(true, false))
        .as(Corner::new);
    return Combinators.combine(sheets, corners, corners, Arbitraries.of(Extent.values()))
        .as(Generated::reference);
  }

  private static Node reference(String sheet, Corner first, Corner last, Extent extent) {
    return switch (extent) {
      case CELL -> new Node.Reference(sheet, first, first, extent, AT);
      case BLOCK -> new Node.Reference(sheet, first, last, extent, AT);
      case COLUMNS ->
        new Node.Reference(
            sheet,
            new Corner(0, true, first.column(), first.columnFixed()),
            new Corner(References.ROWS - 1, true, last.column(), last.columnFixed()),
            extent,
            AT);
      case ROWS ->
        new Node.Reference(
            sheet,
            new Corner(first.row(), first.rowFixed(), 0, true),
            new Corner(last.row(), last.rowFixed(), References.COLUMNS - 1, true),
            extent,
            AT);
    };
  }

  private static Arbitrary<Node> unions() {
    return Combinators.combine(
            Arbitraries.of(Operator.UNION, Operator.INTERSECTION), references(), references())
        .as((operator, left, right) -> new Node.Binary(operator, left, right, AT));
  }

  static Arbitrary<Node> binaries(Arbitrary<Node> parts, Operator... operators) {
    return Combinators.combine(Arbitraries.of(operators), parts, parts)
        .as((operator, left, right) -> new Node.Binary(operator, left, right, AT));
  }

  static Arbitrary<Node> unaries(Arbitrary<Node> parts, Sign... signs) {
    return Combinators.combine(Arbitraries.of(signs), parts)
        .as((sign, part) -> new Node.Unary(sign, part, AT));
  }

  private static Arbitrary<Node> calls(Arbitrary<Node> parts) {
    return Arbitraries.oneOf(functions(parts), modern(parts));
  }

  /** What newer programs spell without a function's name. */
  private static Arbitrary<Node> modern(Arbitrary<Node> parts) {
    Arbitrary<Node> tied = Combinators.combine(
            Arbitraries.of(
                "ANCHORARRAY", "_TRO_ALL", "_TRO_LEADING", "_TRO_TRAILING", "FIELDVALUE"),
            Arbitraries.oneOf(references(), unions(), parts))
        .as((name, part) -> new Node.Call(name, List.of(part), AT));
    return Arbitraries.oneOf(
        tied,
        Combinators.combine(parts, parts)
            .as((body, argument) -> new Node.Applied(
                new Node.Call("LAMBDA", List.of(new Node.Name("", "x", AT), body), AT),
                List.of(argument),
                AT)));
  }

  private static Arbitrary<Node> functions(Arbitrary<Node> parts) {
    return Combinators.combine(
            Arbitraries.of("SUM", "MAX", "SUMPRODUCT", "IFS", "TEXTJOIN", "CUBEVALUE", "CONCAT"),
            parts.list().ofMinSize(3).ofMaxSize(3))
        .as((name, arguments) -> new Node.Call(name, arguments, AT));
  }

  /** Formulas that any engine computes: arithmetic, comparisons and functions over the cells A1 to C4. */
  static Arbitrary<Node> computable(int depth) {
    if (depth == 0) {
      return inputs();
    }
    Arbitrary<Node> parts = computable(depth - 1);
    return Arbitraries.oneOf(
        inputs(),
        binaries(parts, Operator.TIMES, Operator.OVER, Operator.PLUS, Operator.MINUS),
        binaries(parts, Operator.PLUS, Operator.EQUAL, Operator.LESS, Operator.AT_LEAST),
        unaries(parts, Sign.MINUS, Sign.PERCENT),
        binaries(inputs(), Operator.JOIN),
        called(parts));
  }

  private static Arbitrary<Node> inputs() {
    return Arbitraries.oneOf(
        Arbitraries.integers().between(0, 60).map(it -> new Node.Number(it, AT)),
        Arbitraries.integers().between(0, 400).map(it -> new Node.Number(it / 8.0, AT)),
        Combinators.combine(
                Arbitraries.integers().between(0, 3), Arbitraries.integers().between(0, 2))
            .as((row, column) -> {
              Corner corner = new Corner(row, false, column, false);
              return new Node.Reference("", corner, corner, Extent.CELL, AT);
            }));
  }

  private static Arbitrary<Node> called(Arbitrary<Node> parts) {
    Node block = Formula.of("A1:C4").tree();
    return Arbitraries.oneOf(
        Combinators.combine(
                Arbitraries.of("ABS", "SIGN", "ISNUMBER", "NOT", "LEN", "RADIANS"), parts)
            .as((name, one) -> call(name, one)),
        Combinators.combine(
                Arbitraries.of("ROUND", "ROUNDUP", "ROUNDDOWN"),
                parts,
                Arbitraries.integers().between(0, 3))
            .as((name, one, digits) -> call(name, quiet(one), new Node.Number(digits, AT))),
        Combinators.combine(
                Arbitraries.of("IFERROR", "SUM", "MAX", "MIN", "AND", "OR"), parts, parts)
            .as((name, one, other) -> call(name, one, other)),
        Combinators.combine(parts, parts, parts)
            .as((one, two, three) -> call("IF", one, two, three)),
        Arbitraries.of("SUM", "MAX", "MIN", "AVERAGE", "COUNT", "COUNTA")
            .map(name -> call(name, block)),
        parts.map(one -> call("INT", quiet(one))),
        Arbitraries.just(call("PRODUCT", Formula.of("B1:C2").tree())),
        Arbitraries.just(call("SUMPRODUCT", Formula.of("A1:B4").tree())),
        parts.map(one -> call(
            "COUNTIF", block, new Node.Binary(Operator.PLUS, one, new Node.Number(0, AT), AT))));
  }

  /** Without the noise of binary fractions, on which engines do not agree about which side of a whole number they lie. */
  private static Node quiet(Node node) {
    return call("ROUND", node, new Node.Number(9, AT));
  }

  private static Node call(String name, Node... arguments) {
    return new Node.Call(name, List.of(arguments), AT);
  }
}
