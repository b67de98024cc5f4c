package squaresheet.formula;

import java.math.BigDecimal;
import java.math.MathContext;

/** One type of value where another is wanted, as spreadsheets turn them. */
final class Coercion {

  /** Digits of a double that spreadsheets show and compare text by. */
  private static final MathContext SHOWN = new MathContext(15);
  /** The longest plain number before an exponent is written instead, as spreadsheets join numbers to text. */
  private static final int PLAIN = 20;

  private Coercion() {}

  /** The value, unless it is a spreadsheet error or not checked. */
  static Value sound(Value value) {
    if (value instanceof Value.Fault fault) {
      throw Signal.of(fault);
    }
    if (value instanceof Value.NotChecked unknown) {
      throw Signal.of(unknown);
    }
    return value;
  }

  static double number(Value value) {
    if (value instanceof Value.Number number) {
      return number.value();
    }
    sound(value);
    if (value instanceof Value.Truth truth) {
      return truth.value() ? 1 : 0;
    }
    if (value instanceof Value.Text text) {
      return NumberText.read(text.value());
    }
    if (value instanceof Value.Matrix matrix) {
      return number(matrix.at(0, 0));
    }
    return 0;
  }

  static boolean truth(Value value) {
    if (value instanceof Value.Truth truth) {
      return truth.value();
    }
    sound(value);
    if (value instanceof Value.Number number) {
      return number.value() != 0;
    }
    if (value instanceof Value.Text text) {
      if (text.value().equalsIgnoreCase("TRUE") || text.value().equalsIgnoreCase("FALSE")) {
        return text.value().equalsIgnoreCase("TRUE");
      }
      throw Signal.VALUE;
    }
    return value instanceof Value.Matrix matrix && truth(matrix.at(0, 0));
  }

  static String text(Value value) {
    sound(value);
    if (value instanceof Value.Text text) {
      return text.value();
    }
    if (value instanceof Value.Number number) {
      return general(number.value());
    }
    if (value instanceof Value.Truth truth) {
      return truth.value() ? "TRUE" : "FALSE";
    }
    return value instanceof Value.Matrix matrix ? text(matrix.at(0, 0)) : "";
  }

  /** A number as a cell of the General format spells it, to 15 digits. */
  static String general(double number) {
    if (number == Math.rint(number) && Math.abs(number) < 1e15) {
      return Long.toString((long) number);
    }
    BigDecimal shown = new BigDecimal(number).round(SHOWN).stripTrailingZeros();
    if (shown.abs().toPlainString().length() <= PLAIN) {
      return shown.toPlainString();
    }
    int exponent = shown.precision() - shown.scale() - 1;
    String digits = shown.movePointLeft(exponent).stripTrailingZeros().toPlainString();
    String sign = exponent < 0 ? "-" : "+";
    return digits + "E" + sign + (Math.abs(exponent) < 10 ? "0" : "") + Math.abs(exponent);
  }
}
