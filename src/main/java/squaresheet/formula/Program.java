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
 * Arithmetic compiled by exp4j: once for all cells of one relative form, anew for each thread, because one
 * expression shared by threads gives wrong results. Its operators and functions are our own and follow spreadsheets.
 */
final class Program {

  /** What the numbers that go in are called, {@code v0()}, {@code v1()} and so on. */
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
  private static final List<Function> FUNCTIONS = functions();
  private static final List<Operator> OPERATORS = operators();

  private final ThreadLocal<Copy> copies;
  /** The copy used last, tried before the thread's own is looked up; a copy is only ever used by its thread. */
  private Copy recent;

  private Program(String text, int numbers) {
    this.copies = ThreadLocal.withInitial(() -> new Copy(text, numbers));
    this.recent = copies.get();
  }

  /**
   * A thread's own copy and the numbers it runs on. It takes them by functions without arguments, as {@code v0()}, which
   * read them where they lie: the engine's variables are boxed and looked up by name at every step.
   */
  private static final class Copy {
    private final Thread thread = Thread.currentThread();
    private final Expression expression;
    private double[] numbers = {};

    Copy(String text, int count) {
      ExpressionBuilder builder = new ExpressionBuilder(text)
          .implicitMultiplication(false)
          .functions(FUNCTIONS.stream()
              .filter(function -> text.contains(function.getName() + "("))
              .toList())
          .operator(OPERATORS);
      for (int i = 0; i < count; i++) {
        builder.function(new Input(i));
      }
      this.expression = builder.build();
    }

    double run(double[] given) {
      numbers = given;
      return Arithmetic.finite(expression.evaluate());
    }

    /** One of the numbers. */
    private final class Input extends Function {
      private final int at;

      Input(int at) {
        super(VARIABLE + at, 0);
        this.at = at;
      }

      @Override
      public double apply(double... nothing) {
        return numbers[at];
      }
    }
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
    return PROGRAMS.computeIfAbsent(text, it -> new Program(it, numbers));
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
