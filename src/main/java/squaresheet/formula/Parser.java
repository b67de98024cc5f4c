package squaresheet.formula;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import squaresheet.formula.Node.Operator;
import squaresheet.formula.Node.Sign;
import squaresheet.formula.Node.Span;

/**
 * Reads a formula: ECMA-376 grammar, where a sign binds tighter than a percent and a power, and equals run from left to
 * right. Work is bounded by the length of the text, depth by {@link #NESTED} and {@link #DEEP}.
 */
final class Parser {

  /** The longest formula a workbook may hold, in characters (ECMA-376 limits of spreadsheet programs). */
  static final int LONGEST = 8192;
  /** Brackets within brackets: three times what spreadsheet programs take. */
  static final int NESTED = 192;
  /** Parts within parts: what walks the tree needs under a third of an ordinary stack at this depth. */
  static final int DEEP = 1000;

  private final Tokens tokens;
  private final OperandParser operands;
  private int nesting;

  private Parser(String text) {
    this.tokens = new Tokens(text);
    this.operands = new OperandParser(this, tokens);
  }

  /** The tree of a formula's text without its equals sign. */
  static Node parse(String text) {
    if (text.length() > LONGEST) {
      throw new Complaint(
          LONGEST,
          "the formula has " + text.length()
              + " characters: a cell takes at most 8192, so move a part of it to a cell of its own");
    }
    Parser parser = new Parser(text);
    Node tree = parser.whole();
    if (text.length() > DEEP) {
      refuseDeep(tree);
    }
    return tree;
  }

  private Node whole() {
    tokens.space();
    if (tokens.atEnd()) {
      throw new Complaint(0, "the formula is empty: write what to compute, such as A1*2");
    }
    Node tree = expression(Operator.EQUAL.strength());
    if (!tokens.atEnd()) {
      throw Stray.after(tokens, tree);
    }
    return tree;
  }

  /** An expression up to the first operator weaker than {@code weakest}, a comma, a bracket or the end. */
  Node expression(int weakest) {
    Node left = percents(signed());
    while (true) {
      tokens.space();
      Operator operator = operatorHere();
      if (operator == null || operator.strength() < weakest) {
        return left;
      }
      tokens.at += operator.spelling().length();
      tokens.space();
      if (tokens.atEnd()) {
        throw new Complaint(
            tokens.at,
            "a value must follow '" + operator.spelling()
                + "', but the formula ends: write the value, or take the '" + operator.spelling()
                + "' out");
      }
      Node right = percents(signed());
      right = stronger(right, operator.strength());
      left = new Node.Binary(operator, left, right, span(left, right));
    }
  }

  /** Extends an operand by the operators that bind it tighter than {@code strength}. */
  private Node stronger(Node operand, int strength) {
    Node left = operand;
    while (true) {
      tokens.space();
      Operator next = operatorHere();
      if (next == null || next.strength() <= strength) {
        return left;
      }
      tokens.at += next.spelling().length();
      Node right = stronger(percents(signed()), next.strength());
      left = new Node.Binary(next, left, right, span(left, right));
    }
  }

  private static Span span(Node left, Node right) {
    return new Span(left.at().start(), right.at().end());
  }

  private Operator operatorHere() {
    return switch (tokens.peek()) {
      case '+' -> Operator.PLUS;
      case '-' -> Operator.MINUS;
      case '*' -> Operator.TIMES;
      case '/' -> Operator.OVER;
      case '^' -> Operator.POWER;
      case '&' -> Operator.JOIN;
      case '=' -> Operator.EQUAL;
      case '<' ->
        tokens.peek(1) == '>'
            ? Operator.UNEQUAL
            : tokens.peek(1) == '=' ? Operator.AT_MOST : Operator.LESS;
      case '>' -> tokens.peek(1) == '=' ? Operator.AT_LEAST : Operator.MORE;
      default -> null;
    };
  }

  private Node percents(Node operand) {
    Node result = operand;
    while (true) {
      int from = tokens.at;
      tokens.space();
      if (!tokens.take('%')) {
        tokens.at = from;
        return result;
      }
      result = new Node.Unary(Sign.PERCENT, result, new Span(result.at().start(), tokens.at));
    }
  }

  private Node signed() {
    Deque<Sign> signs = null;
    Deque<Integer> places = null;
    tokens.space();
    for (Sign sign = signHere(); sign != null; sign = signHere()) {
      if (signs == null) {
        signs = new ArrayDeque<>();
        places = new ArrayDeque<>();
      }
      signs.push(sign);
      places.push(tokens.at++);
      tokens.space();
    }
    Node result = operands.references();
    while (signs != null && !signs.isEmpty()) {
      result =
          new Node.Unary(signs.pop(), result, new Span(places.pop(), result.at().end()));
    }
    return result;
  }

  private Sign signHere() {
    return switch (tokens.peek()) {
      case '+' -> Sign.PLUS;
      case '-' -> Sign.MINUS;
      case '@' -> Sign.AT;
      default -> null;
    };
  }

  /** What stands between brackets, where a comma joins references; the cursor stands after the opening bracket. */
  Node bracketed(int opened) {
    enter(opened);
    Node inside = expression(Operator.EQUAL.strength());
    while (tokens.peek() == ',') {
      if (!isReference(inside)) {
        throw new Complaint(
            tokens.at,
            "a comma stands between brackets that belong to no function: "
                + "write '.' for a decimal point, or put the function's name before the bracket");
      }
      tokens.at++;
      Node next = expression(Operator.EQUAL.strength());
      inside = new Node.Binary(Operator.UNION, inside, next, span(inside, next));
    }
    close(opened);
    return inside;
  }

  /** The arguments of a function; the cursor stands after the opening bracket. */
  List<Node> arguments(int opened, String function) {
    enter(opened);
    List<Node> arguments = new ArrayList<>();
    tokens.space();
    if (tokens.peek() != ')') {
      do {
        arguments.add(argument());
        tokens.space();
        if (tokens.peek() == ';') {
          throw new Complaint(
              tokens.at, "';' does not separate the arguments of " + function + ": write ','");
        }
      } while (tokens.take(','));
    }
    close(opened);
    return arguments;
  }

  private Node argument() {
    tokens.space();
    if (tokens.peek() == ',' || tokens.peek() == ')') {
      return new Node.Omitted(new Span(tokens.at, tokens.at));
    }
    return expression(Operator.EQUAL.strength());
  }

  private void enter(int opened) {
    if (++nesting > NESTED) {
      throw new Complaint(
          opened,
          "brackets are nested more than " + NESTED
              + " deep: move the inner part to a cell of its own");
    }
  }

  private void close(int opened) {
    tokens.space();
    if (!tokens.take(')')) {
      throw Stray.unclosed(tokens, opened);
    }
    nesting--;
  }

  static boolean isReference(Node node) {
    return node instanceof Node.Reference
        || node instanceof Node.Name
        || node instanceof Node.Table
        || node instanceof Node.Unsupported
        || node instanceof Node.Fault
        || node instanceof Node.Call
        || node instanceof Node.Applied
        || (node instanceof Node.Binary binary
            && binary.operator().strength() >= Operator.UNION.strength());
  }

  private static void refuseDeep(Node tree) {
    List<Node> level = List.of(tree);
    for (int depth = 0; !level.isEmpty(); depth++) {
      if (depth > DEEP) {
        throw new Complaint(
            level.get(0).at().start(),
            "the formula strings more than " + DEEP
                + " operations together: move a part of it to a cell of its own, or use SUM");
      }
      level = level.stream().flatMap(node -> node.parts().stream()).toList();
    }
  }
}
