package squaresheet.formula;

/** Greatest common divisor and least common multiple of numbers cut to whole ones. */
final class Divisors {

  private Divisors() {}

  static double greatest(double[] numbers) {
    double divisor = 0;
    for (double number : numbers) {
      divisor = greatest(divisor, whole(number));
    }
    return divisor;
  }

  static double least(double[] numbers) {
    double multiple = 1;
    for (double number : numbers) {
      double next = whole(number);
      if (next == 0) {
        return 0;
      }
      multiple = multiple / greatest(multiple, next) * next;
    }
    return multiple;
  }

  private static double whole(double number) {
    if (number < 0 || number >= 0x1p53) {
      throw Signal.NUMBER;
    }
    return Math.floor(number);
  }

  private static double greatest(double a, double b) {
    return b == 0 ? a : greatest(b, a % b);
  }
}
