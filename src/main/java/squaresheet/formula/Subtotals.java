package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/**
 * SUBTOTAL, which passes over other subtotals and over rows that a filter hides. Rows hidden by hand are not known here, so
 * what leaves those out is not checked.
 */
final class Subtotals {

  private Subtotals() {}

  static Value of(Arguments arguments) {
    int kind = arguments.whole(0);
    if (kind > 100) {
      throw Signal.notChecked("SUBTOTAL " + kind + " leaves out hidden rows");
    }
    return total(kind, arguments, 1);
  }

  private static Value total(int kind, Arguments arguments, int from) {
    List<Value> values = new ArrayList<>();
    for (int i = from; i < arguments.size(); i++) {
      add(arguments, arguments.grid(i), values);
    }
    if (kind == 3) {
      return Value.of(
          (double) values.stream().filter(it -> !(it instanceof Value.Blank)).count());
    }
    if (kind == 2) {
      return Value.of(
          (double) values.stream().filter(Value.Number.class::isInstance).count());
    }
    double[] numbers = values.stream()
        .map(Coercion::sound)
        .filter(Value.Number.class::isInstance)
        .mapToDouble(Coercion::number)
        .toArray();
    return Value.of(computed(kind, numbers));
  }

  private static void add(Arguments arguments, Grid grid, List<Value> values) {
    if (!grid.isReference()) {
      throw Signal.VALUE;
    }
    Block asked = grid.asked;
    for (int i = 0; i < grid.size(); i++) {
      Ref ref = asked.first().plus(i / grid.columns, i % grid.columns);
      Address cell = new Address(grid.sheet(), ref);
      Scope scope = arguments.evaluation().scope();
      if (!scope.isSubtotal(cell) && !scope.isFilteredOut(cell)) {
        values.add(grid.at(i));
      }
    }
  }

  private static double computed(int kind, double[] numbers) {
    return switch (kind) {
      case 1 -> TotalFunctions.average(numbers);
      case 4 -> DoubleStream.of(numbers).max().orElse(0);
      case 5 -> DoubleStream.of(numbers).min().orElse(0);
      case 6 -> numbers.length == 0 ? 0 : TotalFunctions.product(numbers);
      case 7 -> Math.sqrt(TotalFunctions.variance(numbers, 1));
      case 8 -> Math.sqrt(TotalFunctions.variance(numbers, 0));
      case 9 -> TotalFunctions.sum(numbers);
      case 10 -> TotalFunctions.variance(numbers, 1);
      case 11 -> TotalFunctions.variance(numbers, 0);
      default -> throw Signal.VALUE;
    };
  }
}
