package squaresheet.takeoff;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import squaresheet.formula.Value;

/** Values for people: rounded to what the eye can use. */
final class Shown {

  /** Enough for a hundredth of a square foot on the largest roof. */
  private static final MathContext DIGITS = new MathContext(7, RoundingMode.HALF_UP);

  private Shown() {}

  static String of(Rule rule, Value value) {
    return value instanceof Value.Number ? rule.unit().show(plain(value)) : plain(value);
  }

  static String plain(Value value) {
    if (value instanceof Value.Number number) {
      BigDecimal rounded = new BigDecimal(number.value()).round(DIGITS).stripTrailingZeros();
      return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
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
    return value instanceof Value.NotChecked unknown ? "not checked: " + unknown.reason() : "";
  }
}
