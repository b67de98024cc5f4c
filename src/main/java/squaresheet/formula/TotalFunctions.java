package squaresheet.formula;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/** Totals, counts and averages. */
final class TotalFunctions {

  /** The most products that are kept at once: four used columns as long as a sheet. */
  private static final int LARGEST = 1 << 22;

  private TotalFunctions() {}

  static List<Spec> specs() {
    return List.of(
        // Programs other than the most common one write SUM() with nothing in it, and make it 0.
        new Spec("SUM", 0, Spec.ANY, "m", arguments -> Value.of(sumOf(arguments))),
        over("PRODUCT", numbers -> numbers.length == 0 ? 0 : product(numbers)),
        over("SUMSQ", numbers -> sum(each(numbers, n -> n * n))),
        over("MIN", numbers -> DoubleStream.of(numbers).min().orElse(0)),
        over("MAX", numbers -> DoubleStream.of(numbers).max().orElse(0)),
        over("AVERAGE", TotalFunctions::average),
        over("MEDIAN", TotalFunctions::median),
        over("STDEV", numbers -> Math.sqrt(variance(numbers, 1))),
        over("STDEV.S", numbers -> Math.sqrt(variance(numbers, 1))),
        over("STDEVP", numbers -> Math.sqrt(variance(numbers, 0))),
        over("STDEV.P", numbers -> Math.sqrt(variance(numbers, 0))),
        over("VAR", numbers -> variance(numbers, 1)),
        over("VAR.S", numbers -> variance(numbers, 1)),
        over("VARP", numbers -> variance(numbers, 0)),
        over("VAR.P", numbers -> variance(numbers, 0)),
        over("GCD", Divisors::greatest),
        over("LCM", Divisors::least),
        new Spec("SUMPRODUCT", 1, Spec.ANY, "a", TotalFunctions::sumProduct),
        new Spec("COUNT", 1, Spec.ANY, "m", TotalFunctions::count),
        new Spec("COUNTA", 1, Spec.ANY, "m", TotalFunctions::countFilled),
        new Spec("COUNTBLANK", 1, 1, "m", TotalFunctions::countBlank),
        new Spec("SUBTOTAL", 2, Spec.ANY, "sm", Subtotals::of),
        new Spec("LARGE", 2, 2, "ms", arguments -> ranked(arguments, true)),
        new Spec("SMALL", 2, 2, "ms", arguments -> ranked(arguments, false)),
        new Spec("RANK", 2, 3, "sms", TotalFunctions::rank),
        new Spec("RANK.EQ", 2, 3, "sms", TotalFunctions::rank));
  }

  private interface Total {
    double of(double[] numbers);
  }

  private static Spec over(String name, Total total) {
    return new Spec(
        name, 1, Spec.ANY, "m", arguments -> Value.of(total.of(Numbers.of(arguments, 0))));
  }

  static double sum(double[] numbers) {
    RunningSum sum = new RunningSum(0);
    for (double number : numbers) {
      sum.add(number);
    }
    return sum.total();
  }

  /** The sum of numbers; of one column of cells it goes on from what was added up before. */
  private static double sumOf(Arguments arguments) {
    OptionalDouble column = arguments.size() == 1 && arguments.has(0)
        ? arguments.grid(0).columnSum()
        : OptionalDouble.empty();
    return column.isPresent() ? column.getAsDouble() : sum(Numbers.of(arguments, 0));
  }

  static double product(double[] numbers) {
    double product = 1;
    for (double number : numbers) {
      product *= number;
    }
    return product;
  }

  private static double[] each(double[] numbers, DoubleUnaryOperator work) {
    return DoubleStream.of(numbers).map(work).toArray();
  }

  static double average(double[] numbers) {
    return Arithmetic.over(sum(numbers), numbers.length);
  }

  private static double median(double[] numbers) {
    if (numbers.length == 0) {
      throw Signal.NUMBER;
    }
    double[] sorted = numbers.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  static double variance(double[] numbers, int less) {
    if (numbers.length <= less) {
      throw Signal.DIVISION;
    }
    double mean = average(numbers);
    return sum(each(numbers, n -> (n - mean) * (n - mean))) / (numbers.length - less);
  }

  private static Value sumProduct(Arguments arguments) {
    Grid[] grids = new Grid[arguments.size()];
    for (int i = 0; i < grids.length; i++) {
      grids[i] = arguments.array(i);
      boolean fits = grids[i].askedRows() == grids[0].askedRows()
          && grids[i].askedColumns() == grids[0].askedColumns();
      if (!fits) {
        throw Signal.VALUE;
      }
    }
    if (grids[0].size() > LARGEST) {
      throw Signal.notChecked("SUMPRODUCT over " + grids[0].size() + " cells is not followed");
    }
    double[] products = new double[grids[0].size()];
    for (int i = 0; i < products.length; i++) {
      products[i] = 1;
      for (Grid grid : grids) {
        products[i] *= grids.length == 1 ? alone(grid.at(i)) : plain(at(grid, grids[0], i));
      }
    }
    return Value.of(sum(products));
  }

  private static Value at(Grid grid, Grid shape, int index) {
    return grid.at(index / shape.columns, index % shape.columns);
  }

  private static double alone(Value value) {
    return plain(value);
  }

  /** A number in an array; what is no number counts as 0, an error is an error. */
  private static double plain(Value value) {
    return Coercion.sound(value) instanceof Value.Number number ? number.value() : 0;
  }

  private static Value count(Arguments arguments) {
    long count = 0;
    for (int i = 0; i < arguments.size(); i++) {
      Grid grid = arguments.grid(i);
      for (int j = 0; j < grid.size(); j++) {
        count += counts(grid.at(j), grid.isReference() || !grid.isSingle()) ? 1 : 0;
      }
    }
    return Value.of((double) count);
  }

  private static boolean counts(Value value, boolean inCells) {
    if (value instanceof Value.Number) {
      return true;
    }
    if (inCells || value instanceof Value.Fault) {
      return false;
    }
    try {
      Coercion.number(value);
      return true;
    } catch (Signal notANumber) {
      notANumber.fault();
      return false;
    }
  }

  private static Value countFilled(Arguments arguments) {
    long count = 0;
    for (int i = 0; i < arguments.size(); i++) {
      Grid grid = arguments.grid(i);
      for (int j = 0; j < grid.size(); j++) {
        boolean blankCell = grid.isReference() && grid.at(j) instanceof Value.Blank;
        count += blankCell ? 0 : 1;
      }
    }
    return Value.of((double) count);
  }

  private static Value countBlank(Arguments arguments) {
    Grid grid = arguments.grid(0);
    long filled = 0;
    for (int i = 0; i < grid.size(); i++) {
      Value value = grid.at(i);
      boolean blank = value instanceof Value.Blank
          || (value instanceof Value.Text text && text.value().isEmpty());
      filled += blank ? 0 : 1;
    }
    return Value.of((double) (grid.askedSize() - filled));
  }

  private static Value ranked(Arguments arguments, boolean fromTop) {
    double[] sorted = Numbers.of(arguments.grid(0));
    Arrays.sort(sorted);
    int rank = (int) Math.ceil(arguments.number(1));
    if (rank < 1 || rank > sorted.length) {
      throw Signal.NUMBER;
    }
    return Value.of(sorted[fromTop ? sorted.length - rank : rank - 1]);
  }

  private static Value rank(Arguments arguments) {
    double number = arguments.number(0);
    boolean rising = arguments.truth(2, false);
    double[] among = Numbers.of(arguments.grid(1));
    if (DoubleStream.of(among).noneMatch(other -> other == number)) {
      throw Signal.MISSING;
    }
    long before = DoubleStream.of(among)
        .filter(other -> rising ? other < number : other > number)
        .count();
    return Value.of((double) (before + 1));
  }
}
