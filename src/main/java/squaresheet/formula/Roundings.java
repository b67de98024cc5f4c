package squaresheet.formula;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The roundings of spreadsheets, which work on the decimal a number shows rather than on its binary tail. */
final class Roundings {

  /** Digits beyond which a double has none to round. */
  private static final int DIGITS = 308;
  /** Relative distance at which a quotient is a whole number: spreadsheets show 15 digits. */
  private static final double WHOLE = 1e-14;

  /** As often as a divisor may go into a number before spreadsheet programs give #NUM! or lose the remainder. */
  private static final double MOST_TIMES = 0x1p40;

  private Roundings() {}

  /** To the nearest, halves away from zero. */
  static double nearest(double number, double digits) {
    return rounded(number, digits, RoundingMode.HALF_UP);
  }

  static double away(double number, double digits) {
    return rounded(number, digits, RoundingMode.UP);
  }

  static double toward(double number, double digits) {
    return rounded(number, digits, RoundingMode.DOWN);
  }

  private static double rounded(double number, double digits, RoundingMode mode) {
    double places = digits < 0 ? Math.ceil(digits) : Math.floor(digits);
    if (Math.abs(places) > DIGITS) {
      return places > 0 ? number : mode == RoundingMode.UP && number != 0 ? fail() : 0;
    }
    if (places == 0 && number == Math.rint(number)) {
      return number;
    }
    return decimal(number).setScale((int) places, mode).doubleValue();
  }

  private static double fail() {
    throw Signal.NUMBER;
  }

  /** The shortest decimal that reads as this double, cut to the 15 digits that spreadsheets keep where it has more. */
  private static BigDecimal decimal(double number) {
    BigDecimal shortest = new BigDecimal(Double.toString(number));
    return shortest.precision() <= 15
        ? shortest
        : shortest.round(new java.math.MathContext(15, RoundingMode.HALF_EVEN));
  }

  static double floor(double number) {
    double nearest = Math.rint(number);
    return Arithmetic.isSame(number, nearest) ? nearest : Math.floor(number);
  }

  private static double ceil(double number) {
    double nearest = Math.rint(number);
    return Math.abs(number - nearest) <= Math.abs(number) * WHOLE ? nearest : Math.ceil(number);
  }

  private static double floorOf(double number) {
    double nearest = Math.rint(number);
    return Math.abs(number - nearest) <= Math.abs(number) * WHOLE ? nearest : Math.floor(number);
  }

  /** To the nearest multiple, halves away from zero; the signs must agree. */
  static double multiple(double number, double multiple) {
    if (number == 0 || multiple == 0) {
      return 0;
    }
    if (number < 0 != multiple < 0) {
      throw Signal.NUMBER;
    }
    return times(Math.floor(number / multiple + 0.5), multiple);
  }

  private static double times(double count, double multiple) {
    Arithmetic.finite(count);
    BigDecimal exact = new BigDecimal(Double.toString(multiple)).multiply(new BigDecimal(count));
    return exact.doubleValue();
  }

  /** Away from zero where the signs agree; a negative number with a positive multiple goes up, toward zero. */
  static double ceiling(double number, double multiple) {
    if (number == 0 || multiple == 0) {
      return 0;
    }
    if (number > 0 && multiple < 0) {
      throw Signal.NUMBER;
    }
    return times(ceil(number / multiple), multiple);
  }

  /** Toward zero where the signs agree; a negative number with a positive multiple goes down, away from zero. */
  static double floor(double number, double multiple) {
    if (number == 0) {
      return 0;
    }
    if (multiple == 0) {
      throw Signal.DIVISION;
    }
    if (number > 0 && multiple < 0) {
      throw Signal.NUMBER;
    }
    return times(floorOf(number / multiple), multiple);
  }

  /** Up to a multiple, whatever its sign; negative numbers away from zero where the third number is not 0. */
  static double ceilingMath(double... numbers) {
    double multiple = numbers.length > 1 ? Math.abs(numbers[1]) : 1;
    if (multiple == 0 || numbers[0] == 0) {
      return 0;
    }
    boolean away = numbers.length > 2 && numbers[2] != 0 && numbers[0] < 0;
    double count = numbers[0] / multiple;
    return times(away ? floorOf(count) : ceil(count), multiple);
  }

  /** Down to a multiple, whatever its sign; negative numbers toward zero where the third number is not 0. */
  static double floorMath(double... numbers) {
    double multiple = numbers.length > 1 ? Math.abs(numbers[1]) : 1;
    if (multiple == 0 || numbers[0] == 0) {
      return 0;
    }
    boolean toward = numbers.length > 2 && numbers[2] != 0 && numbers[0] < 0;
    double count = numbers[0] / multiple;
    return times(toward ? ceil(count) : floorOf(count), multiple);
  }

  static double even(double number) {
    return Math.signum(number) * 2 * ceil(Math.abs(number) / 2);
  }

  static double odd(double number) {
    double size = Math.max(1, 2 * ceil((Math.abs(number) + 1) / 2) - 1);
    return number < 0 ? -size : size;
  }

  /** What is left of a division, with the sign of the divisor. */
  static double modulo(double number, double divisor) {
    if (divisor == 0) {
      throw Signal.DIVISION;
    }
    if (Math.abs(number / divisor) >= MOST_TIMES) {
      throw Signal.notChecked("MOD of a number so many times its divisor differs between programs");
    }
    double left = Arithmetic.minus(number, divisor * floorOf(number / divisor));
    return left == 0 ? 0 : left;
  }

  static double factorial(double number) {
    double whole = Math.floor(number);
    if (whole < 0 || whole > 170) {
      throw Signal.NUMBER;
    }
    double product = 1;
    for (int i = 2; i <= whole; i++) {
      product *= i;
    }
    return product;
  }

  static double combinations(double number, double chosen) {
    double n = Math.floor(number);
    double k = Math.floor(chosen);
    if (n < 0 || k < 0 || k > n || n > 1e6) {
      throw Signal.NUMBER;
    }
    double product = 1;
    for (int i = 1; i <= Math.min(k, n - k); i++) {
      product = product * (n - i + 1) / i;
    }
    return Math.rint(product);
  }
}
