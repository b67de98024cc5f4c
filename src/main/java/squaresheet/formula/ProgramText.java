package squaresheet.formula;

import java.math.BigDecimal;
import java.util.List;
import squaresheet.formula.Node.Operator;
import squaresheet.formula.Node.Sign;

/** Writes arithmetic, fully bracketed, for the arithmetic engine; nothing a user typed gets in but numbers. */
final class ProgramText {

  private ProgramText() {}

  /** Whether a program can compute this part from the numbers below it. */
  static boolean isArithmetic(Node node) {
    if (node instanceof Node.Binary binary) {
      int strength = binary.operator().strength();
      return strength >= Operator.PLUS.strength() && strength <= Operator.POWER.strength();
    }
    if (node instanceof Node.Unary unary) {
      return unary.sign() == Sign.MINUS || unary.sign() == Sign.PERCENT;
    }
    return node instanceof Node.Call call
        && Operation.find(call.function(), call.arguments().size()).isPresent()
        && call.arguments().stream().noneMatch(Node.Omitted.class::isInstance);
  }

  /** The program of a part, and the parts it takes its numbers from, in order. */
  static String write(Node node, List<Node> holes) {
    StringBuilder out = new StringBuilder();
    write(node, holes, out);
    return out.toString();
  }

  private static void write(Node node, List<Node> holes, StringBuilder out) {
    if (node instanceof Node.Number number && isPlain(number.value())) {
      append(number.value(), out);
    } else if (!isArithmetic(node)) {
      out.append(Program.VARIABLE).append(holes.size()).append("()");
      holes.add(node);
    } else if (node instanceof Node.Binary binary) {
      out.append('(');
      write(binary.left(), holes, out);
      out.append(binary.operator().spelling());
      write(binary.right(), holes, out);
      out.append(')');
    } else if (node instanceof Node.Unary unary) {
      out.append(unary.sign() == Sign.MINUS ? Program.MINUS : Program.PERCENT).append('(');
      write(unary.operand(), holes, out);
      out.append(')');
    } else {
      called((Node.Call) node, holes, out);
    }
  }

  private static void called(Node.Call call, List<Node> holes, StringBuilder out) {
    out.append(Program.function(call.function(), call.arguments().size())).append('(');
    for (int i = 0; i < call.arguments().size(); i++) {
      out.append(i > 0 ? "," : "");
      write(call.arguments().get(i), holes, out);
    }
    out.append(')');
  }

  private static void append(double value, StringBuilder out) {
    if (value == Math.rint(value)) {
      out.append((long) value);
    } else {
      out.append(new BigDecimal(Double.toString(value)).toPlainString());
    }
  }

  /** Whether the number is short when written without an exponent. */
  private static boolean isPlain(double value) {
    return value == 0 || (value >= 1e-9 && value < 1e15);
  }
}
