package squaresheet.formula;

import java.util.Arrays;

/** The numbers among values: all that is typed into a call is turned into numbers, in cells only numbers count. */
final class Numbers {

  private double[] found = new double[16];
  private int size;

  private Numbers() {}

  /** The numbers of the arguments from one on. */
  static double[] of(Arguments arguments, int from) {
    Numbers numbers = new Numbers();
    for (int i = from; i < arguments.size(); i++) {
      if (!arguments.has(i)) {
        numbers.add(0);
      } else {
        numbers.add(arguments.grid(i));
      }
    }
    return Arrays.copyOf(numbers.found, numbers.size);
  }

  static double[] of(Grid grid) {
    Numbers numbers = new Numbers();
    numbers.add(grid);
    return Arrays.copyOf(numbers.found, numbers.size);
  }

  private void add(Grid grid) {
    if (grid.isSingle() && !grid.isReference()) {
      add(Coercion.number(grid.at(0)));
      return;
    }
    grid.eachFilled(value -> {
      if (Coercion.sound(value) instanceof Value.Number number) {
        add(number.value());
      }
    });
  }

  private void add(double number) {
    if (size == found.length) {
      found = Arrays.copyOf(found, size * 2);
    }
    found[size++] = number;
  }
}
