package squaresheet.formula;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A function from numbers to a number, which compiled programs may call.
 *
 * @param name in capitals
 * @param least the fewest numbers it takes
 * @param most the most numbers it takes
 * @param body what it does; it may signal a spreadsheet error, or give no number where there is none
 */
record Operation(String name, int least, int most, Body body) {

  /** What an operation does. */
  @FunctionalInterface
  interface Body {
    /** The number for these numbers. */
    double apply(double... numbers);
  }

  private static final Map<String, Operation> ALL = all();

  /** The operation of that name, taking so many numbers. */
  static Optional<Operation> find(String name, int count) {
    Operation operation = ALL.get(name);
    boolean fits = operation != null && count >= operation.least && count <= operation.most;
    return fits ? Optional.of(operation) : Optional.empty();
  }

  static Iterable<Operation> values() {
    return ALL.values();
  }

  private static Map<String, Operation> all() {
    Map<String, Operation> all = new LinkedHashMap<>();
    add(all, "ABS", 1, 1, n -> Math.abs(n[0]));
    add(all, "SIGN", 1, 1, n -> Math.signum(n[0]));
    add(all, "SQRT", 1, 1, n -> Math.sqrt(n[0]));
    add(all, "POWER", 2, 2, n -> Arithmetic.power(n[0], n[1]));
    add(all, "EXP", 1, 1, n -> Math.exp(n[0]));
    add(all, "PI", 0, 0, n -> Math.PI);
    addLogarithms(all);
    addAngles(all);
    addRoundings(all);
    addDivisions(all);
    return all;
  }

  private static void add(Map<String, Operation> all, String name, int least, int most, Body body) {
    all.put(name, new Operation(name, least, most, body));
  }

  private static void addLogarithms(Map<String, Operation> all) {
    add(all, "LN", 1, 1, n -> Math.log(positive(n[0])));
    add(all, "LOG10", 1, 1, n -> Math.log10(positive(n[0])));
    add(
        all,
        "LOG",
        1,
        2,
        n -> n.length == 1
            ? Math.log10(positive(n[0]))
            : Arithmetic.over(Math.log(positive(n[0])), Math.log(positive(n[1]))));
  }

  private static double positive(double number) {
    if (number <= 0) {
      throw Signal.NUMBER;
    }
    return number;
  }

  private static void addAngles(Map<String, Operation> all) {
    add(all, "SIN", 1, 1, n -> Math.sin(n[0]));
    add(all, "COS", 1, 1, n -> Math.cos(n[0]));
    add(all, "TAN", 1, 1, n -> Math.tan(n[0]));
    add(all, "ASIN", 1, 1, n -> Math.asin(n[0]));
    add(all, "ACOS", 1, 1, n -> Math.acos(n[0]));
    add(all, "ATAN", 1, 1, n -> Math.atan(n[0]));
    add(all, "ATAN2", 2, 2, n -> {
      if (n[0] == 0 && n[1] == 0) {
        throw Signal.DIVISION;
      }
      return Math.atan2(n[1], n[0]);
    });
    add(all, "SINH", 1, 1, n -> Math.sinh(n[0]));
    add(all, "COSH", 1, 1, n -> Math.cosh(n[0]));
    add(all, "TANH", 1, 1, n -> Math.tanh(n[0]));
    add(all, "RADIANS", 1, 1, n -> n[0] * Math.PI / 180);
    add(all, "DEGREES", 1, 1, n -> n[0] * 180 / Math.PI);
  }

  /** No digits unless said (OpenFormula 1.2, 6.17.5), though some programs want them said. */
  private static double digits(double[] numbers) {
    return numbers.length > 1 ? numbers[1] : 0;
  }

  private static void addRoundings(Map<String, Operation> all) {
    add(all, "ROUND", 1, 2, n -> Roundings.nearest(n[0], digits(n)));
    add(all, "ROUNDUP", 1, 2, n -> Roundings.away(n[0], digits(n)));
    add(all, "ROUNDDOWN", 1, 2, n -> Roundings.toward(n[0], digits(n)));
    add(all, "TRUNC", 1, 2, n -> Roundings.toward(n[0], digits(n)));
    add(all, "INT", 1, 1, n -> Roundings.floor(n[0]));
    add(all, "MROUND", 2, 2, n -> Roundings.multiple(n[0], n[1]));
    add(all, "CEILING", 2, 2, n -> Roundings.ceiling(n[0], n[1]));
    add(all, "FLOOR", 2, 2, n -> Roundings.floor(n[0], n[1]));
    add(all, "CEILING.MATH", 1, 3, n -> Roundings.ceilingMath(n));
    add(all, "FLOOR.MATH", 1, 3, n -> Roundings.floorMath(n));
    for (String upward : new String[] {"CEILING.PRECISE", "ISO.CEILING"}) {
      add(all, upward, 1, 2, n -> Roundings.ceilingMath(n));
    }
    add(all, "FLOOR.PRECISE", 1, 2, n -> Roundings.floorMath(n));
    add(all, "EVEN", 1, 1, n -> Roundings.even(n[0]));
    add(all, "ODD", 1, 1, n -> Roundings.odd(n[0]));
  }

  private static void addDivisions(Map<String, Operation> all) {
    add(all, "MOD", 2, 2, n -> Roundings.modulo(n[0], n[1]));
    add(all, "QUOTIENT", 2, 2, n -> Roundings.toward(Arithmetic.over(n[0], n[1]), 0));
    add(all, "FACT", 1, 1, n -> Roundings.factorial(n[0]));
    add(all, "COMBIN", 2, 2, n -> Roundings.combinations(n[0], n[1]));
  }
}
