package squaresheet.formula;

/** Arithmetic on doubles as spreadsheets do it, signalling {@code #DIV/0!} and {@code #NUM!}. */
final class Arithmetic {

  /**
   * Relative size under which a difference is nothing: 2^-48, sixteen steps of a double. Spreadsheets take 0.1+0.2-0.3 for
   * 0; this is the rule of LibreOffice, applied at every sum and difference.
   */
  private static final double NEAR_ZERO = 0x1p-48;

  private Arithmetic() {}

  static double plus(double a, double b) {
    double sum = a + b;
    if (Math.abs(sum) <= Math.abs(a) * NEAR_ZERO && sum != 0 && isSame(a, -b)) {
      return 0;
    }
    return finite(sum);
  }

  static double minus(double a, double b) {
    double difference = a - b;
    if (Math.abs(difference) <= Math.abs(a) * NEAR_ZERO && difference != 0 && isSame(a, b)) {
      return 0;
    }
    return finite(difference);
  }

  /** Whether two numbers are one but for the noise of computing in binary. */
  static boolean isSame(double a, double b) {
    if (a == b) {
      return true;
    }
    double difference = Math.abs(a - b);
    if (difference >= Math.abs(a) * NEAR_ZERO || difference >= Math.abs(b) * NEAR_ZERO) {
      return false;
    }
    return !(isWhole(a) && isWhole(b));
  }

  private static boolean isWhole(double a) {
    return Math.abs(a) < 0x1p53 && a == Math.rint(a);
  }

  static double times(double a, double b) {
    return finite(a * b);
  }

  static double over(double a, double b) {
    if (b == 0) {
      throw Signal.DIVISION;
    }
    return finite(a / b);
  }

  static double power(double a, double b) {
    if (b == 2) {
      return finite(a * a);
    }
    if (a == 0 && b <= 0) {
      throw b == 0 ? Signal.NUMBER : Signal.DIVISION;
    }
    return finite(Math.pow(a, b));
  }

  /** The number, unless it is none or too large. */
  static double finite(double number) {
    if (!Double.isFinite(number)) {
      throw Signal.NUMBER;
    }
    return number;
  }

  static double apply(Node.Operator operator, double a, double b) {
    return switch (operator) {
      case PLUS -> plus(a, b);
      case MINUS -> minus(a, b);
      case TIMES -> times(a, b);
      case OVER -> over(a, b);
      case POWER -> power(a, b);
      default -> throw new IllegalArgumentException(operator + " is not arithmetic");
    };
  }
}
