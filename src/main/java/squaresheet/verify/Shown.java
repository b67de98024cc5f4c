package squaresheet.verify;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.OptionalDouble;
import squaresheet.formula.Value;
import squaresheet.sheet.Content;

/** How values read in sentences, and when two numbers are the same. */
final class Shown {

  /** Sixty-four-bit arithmetic in another order moves the last digits of a value, by far less than this. */
  private static final double SAME = 1e-9;
  /** Spreadsheet programs keep fifteen digits; long chains of them lose a few. */
  private static final double OTHER_PROGRAM = 1e-7;

  private Shown() {}

  /** The value in a sentence: at most six significant decimals, no exponent. */
  static String of(Value value) {
    if (value instanceof Value.Number number) {
      return number(number.value());
    }
    if (value instanceof Value.Text text) {
      return "'" + text.value() + "'";
    }
    if (value instanceof Value.Truth truth) {
      return truth.value() ? "TRUE" : "FALSE";
    }
    if (value instanceof Value.Fault fault) {
      return fault.code();
    }
    if (value instanceof Value.NotChecked unknown) {
      return "not checked: " + unknown.reason();
    }
    return value instanceof Value.Matrix matrix ? of(matrix.at(0, 0)) : "blank";
  }

  static String cell(squaresheet.sheet.Cell cell) {
    return cell.isFormula()
        ? "=" + cell.formula()
        : cell.stored().isBlank() ? "" : of(cell.stored());
  }

  static String of(Content content) {
    return of(Value.of(content));
  }

  /** Up to four decimals, more for small numbers. */
  static String number(double value) {
    BigDecimal exact = BigDecimal.valueOf(value);
    BigDecimal rounded = Math.abs(value) < 0.1
        ? exact.round(new MathContext(4, RoundingMode.HALF_UP))
        : exact.setScale(Math.min(4, Math.max(0, exact.scale())), RoundingMode.HALF_UP);
    String plain = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    int point = plain.indexOf('.');
    int whole = point < 0 ? plain.length() : point;
    return whole <= 4
        ? plain
        : String.format(Locale.ROOT, "%,d", new BigDecimal(plain).toBigInteger())
            + (point < 0 ? "" : plain.substring(point));
  }

  /** The same without commas. */
  static String plain(double value) {
    return number(value).replace(",", "");
  }

  static OptionalDouble number(Value value) {
    return value instanceof Value.Number number
        ? OptionalDouble.of(number.value())
        : OptionalDouble.empty();
  }

  /** Whether two numbers differ by no more than the order of their making. */
  static boolean same(double one, double other) {
    return Math.abs(one - other) <= SAME * Math.max(1, Math.max(Math.abs(one), Math.abs(other)));
  }

  static boolean same(Value one, Value other) {
    if (one instanceof Value.Number a && other instanceof Value.Number b) {
      return same(a.value(), b.value());
    }
    return one.equals(other) || (isNothing(one) && isNothing(other));
  }

  /** Whether a stored value is the one worked out, as far as another program's last digits and its 1 for TRUE go. */
  static boolean near(Value now, Value stored) {
    OptionalDouble one = numberOrTruth(now);
    OptionalDouble other = numberOrTruth(stored);
    if (one.isEmpty() || other.isEmpty()) {
      return same(now, stored);
    }
    double size = Math.max(1, Math.max(Math.abs(one.getAsDouble()), Math.abs(other.getAsDouble())));
    return Math.abs(one.getAsDouble() - other.getAsDouble()) <= OTHER_PROGRAM * size;
  }

  private static OptionalDouble numberOrTruth(Value value) {
    return value instanceof Value.Truth truth
        ? OptionalDouble.of(truth.value() ? 1 : 0)
        : number(value);
  }

  private static boolean isNothing(Value value) {
    return value instanceof Value.Blank
        || (value instanceof Value.Text text && text.value().isEmpty());
  }
}
