package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import net.objecthunter.exp4j.Expression;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;
import net.objecthunter.exp4j.operator.Operator;

/**
 * Arithmetic compiled by exp4j: once for all cells of one relative form, with a copy for each thread, because one
 * expression shared by threads gives wrong results. Its operators and functions are our own and follow spreadsheets.
 */
final class Program {

  static final String VARIABLE = "v";
  static final String MINUS = "f_minus";
  static final String PERCENT = "f_percent";
  /** Numbers one program may take in; what needs more is computed step by step. */
  static final int MOST = 256;
  /** Programs kept at a time; a workbook has far fewer different forms. */
  private static final int KEPT = 10_000;

  private static final Map<String, Program> PROGRAMS = new ConcurrentHashMap<>();
  private static final String[] NAMES = names();
  private static final List<Function> FUNCTIONS = functions();
  private static final List<Operator> OPERATORS = operators();

  private final ThreadLocal<Expression> copies;

  private Program(Expression first) {
    this.copies = ThreadLocal.withInitial(() -> new Expression(first));
  }

  private static String[] names() {
    String[] names = new String[MOST];
    for (int i = 0; i < MOST; i++) {
      names[i] = VARIABLE + i;
    }
    return names;
  }

  /** The program of this text, which takes so many numbers. */
  static Program of(String text, int numbers) {
    Program kept = PROGRAMS.get(text);
    if (kept != null) {
      return kept;
    }
    if (PROGRAMS.size() >= KEPT) {
      PROGRAMS.clear();
    }
    return PROGRAMS.computeIfAbsent(text, it -> compiled(it, numbers));
  }

  private static Program compiled(String text, int numbers) {
    ExpressionBuilder builder = new ExpressionBuilder(text)
        .implicitMultiplication(false)
        .functions(FUNCTIONS)
        .operator(OPERATORS);
    for (int i = 0; i < numbers; i++) {
      builder.variable(NAMES[i]);
    }
    return new Program(builder.build());
  }

  /** The result for these numbers; signals a spreadsheet error where there is none. */
  double run(double[] numbers) {
    Expression expression = copies.get();
    for (int i = 0; i < numbers.length; i++) {
      expression.setVariable(NAMES[i], numbers[i]);
    }
    return expression.evaluate();
  }

  /** The name under which a program calls a function with so many numbers. */
  static String function(String name, int count) {
    return "f_" + name.replace('.', '_') + "_" + count;
  }

  private static List<Function> functions() {
    List<Function> functions = new ArrayList<>();
    for (Operation operation : Operation.values()) {
      for (int count = operation.least(); count <= operation.most(); count++) {
        functions.add(function(function(operation.name(), count), count, operation.body()));
      }
    }
    functions.add(function(MINUS, 1, n -> -n[0]));
    functions.add(function(PERCENT, 1, n -> n[0] / 100));
    return functions;
  }

  private static Function function(String name, int count, Operation.Body body) {
    return new Function(name, count) {
      @Override
      public double apply(double... numbers) {
        return body.apply(numbers);
      }
    };
  }

  private static List<Operator> operators() {
    return List.of(
        operator("+", Operator.PRECEDENCE_ADDITION, n -> Arithmetic.plus(n[0], n[1])),
        operator("-", Operator.PRECEDENCE_SUBTRACTION, n -> Arithmetic.minus(n[0], n[1])),
        operator("*", Operator.PRECEDENCE_MULTIPLICATION, n -> Arithmetic.times(n[0], n[1])),
        operator("/", Operator.PRECEDENCE_DIVISION, n -> Arithmetic.over(n[0], n[1])),
        operator("^", Operator.PRECEDENCE_POWER, n -> Arithmetic.power(n[0], n[1])));
  }

  private static Operator operator(String symbol, int precedence, Operation.Body body) {
    return new Operator(symbol, 2, true, precedence) {
      @Override
      public double apply(double... numbers) {
        return body.apply(numbers);
      }
    };
  }
}
