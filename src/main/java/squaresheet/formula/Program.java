package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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

  /** Functions that exp4j has itself and computes as Java does; a wrong number out of them is caught by what follows. */
  private static final Set<String> BUILT_IN = Set.of("SQRT", "ABS", "SIN", "COS");

  private static final Map<String, Program> PROGRAMS = new ConcurrentHashMap<>();
  private static final String[] NAMES = names();
  private static final List<Function> FUNCTIONS = functions();
  private static final List<Operator> OPERATORS = operators();

  private final ThreadLocal<Copy> copies;
  /** The copy used last, tried before the thread's own is looked up; a copy is only ever used by its thread. */
  private Copy recent;

  private Program(Expression first, int numbers) {
    this.copies = ThreadLocal.withInitial(() -> new Copy(new Expression(first), numbers));
    this.recent = copies.get();
  }

  /** A thread's own copy, and the numbers it was given last: those that stay, as a waste rate down a column, are not set anew. */
  private static final class Copy {
    private final Thread thread = Thread.currentThread();
    private final Expression expression;
    private final double[] last;

    Copy(Expression expression, int numbers) {
      this.expression = expression;
      this.last = new double[numbers];
      java.util.Arrays.fill(last, Double.NaN);
    }

    double run(double[] numbers) {
      for (int i = 0; i < numbers.length; i++) {
        if (numbers[i] != last[i]) {
          expression.setVariable(NAMES[i], numbers[i]);
          last[i] = numbers[i];
        }
      }
      return Arithmetic.finite(expression.evaluate());
    }
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
        .functions(FUNCTIONS.stream()
            .filter(function -> text.contains(function.getName() + "("))
            .toList())
        .operator(OPERATORS);
    for (int i = 0; i < numbers; i++) {
      builder.variable(NAMES[i]);
    }
    return new Program(builder.build(), numbers);
  }

  /** The result for these numbers; signals a spreadsheet error where there is none. */
  double run(double[] numbers) {
    Copy copy = recent;
    if (copy.thread != Thread.currentThread()) {
      copy = copies.get();
      recent = copy;
    }
    return copy.run(numbers);
  }

  /** The name under which a program calls a function with so many numbers. */
  static String function(String name, int count) {
    return BUILT_IN.contains(name)
        ? name.toLowerCase(Locale.ROOT)
        : "f_" + name.replace('.', '_') + "_" + count;
  }

  private static List<Function> functions() {
    List<Function> functions = new ArrayList<>();
    for (Operation operation : Operation.values()) {
      if (BUILT_IN.contains(operation.name())) {
        continue;
      }
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
        return Arithmetic.finite(body.apply(numbers));
      }
    };
  }

  /** Spelled out one by one, so that the inner loop makes one call less than through a shared body. */
  private static List<Operator> operators() {
    return List.of(
        new Operator("+", 2, true, Operator.PRECEDENCE_ADDITION) {
          @Override
          public double apply(double... n) {
            return Arithmetic.plus(n[0], n[1]);
          }
        },
        new Operator("-", 2, true, Operator.PRECEDENCE_SUBTRACTION) {
          @Override
          public double apply(double... n) {
            return Arithmetic.minus(n[0], n[1]);
          }
        },
        new Operator("*", 2, true, Operator.PRECEDENCE_MULTIPLICATION) {
          @Override
          public double apply(double... n) {
            return Arithmetic.times(n[0], n[1]);
          }
        },
        new Operator("/", 2, true, Operator.PRECEDENCE_DIVISION) {
          @Override
          public double apply(double... n) {
            return Arithmetic.over(n[0], n[1]);
          }
        },
        power());
  }

  private static Operator power() {
    return new Operator("^", 2, true, Operator.PRECEDENCE_POWER) {
      @Override
      public double apply(double... n) {
        return Arithmetic.power(n[0], n[1]);
      }
    };
  }
}
