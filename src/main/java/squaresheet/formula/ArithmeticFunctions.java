package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;

/** The functions from numbers to a number, as a formula calls them one by one. */
final class ArithmeticFunctions {

  private ArithmeticFunctions() {}

  static List<Spec> specs() {
    List<Spec> specs = new ArrayList<>();
    for (Operation operation : Operation.values()) {
      String takes = operation.most() == 0 ? "" : "s";
      specs.add(new Spec(
          operation.name(),
          least(operation),
          operation.most(),
          takes,
          arguments -> Value.of(operation.body().apply(numbers(arguments)))));
    }
    specs.add(new Spec("CEILING", 1, 3, "s", ArithmeticFunctions::ceiling));
    specs.add(new Spec("FLOOR", 1, 3, "s", ArithmeticFunctions::floor));
    return specs;
  }

  private static int least(Operation operation) {
    return operation.least();
  }

  private static double[] numbers(Arguments arguments) {
    double[] numbers = new double[arguments.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = arguments.has(i) ? arguments.number(i) : 0;
    }
    return numbers;
  }

  /** OpenFormula gives CEILING a third argument: with one that is not 0, negative numbers go away from zero. */
  private static Value ceiling(Arguments arguments) {
    double number = arguments.number(0);
    double multiple = arguments.number(1, Math.signum(number));
    if (arguments.size() < 3) {
      return Value.of(Roundings.ceiling(number, multiple));
    }
    return Value.of(Roundings.ceilingMath(number, multiple, arguments.number(2, 0)));
  }

  private static Value floor(Arguments arguments) {
    double number = arguments.number(0);
    double multiple = arguments.number(1, Math.signum(number));
    if (arguments.size() < 3) {
      return Value.of(Roundings.floor(number, multiple));
    }
    return Value.of(Roundings.floorMath(number, multiple, arguments.number(2, 0)));
  }
}
