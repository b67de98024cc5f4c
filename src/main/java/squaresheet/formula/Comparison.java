package squaresheet.formula;

import java.util.Locale;

/** The order of values: numbers before texts before FALSE before TRUE; texts without regard to case. */
final class Comparison {

  private Comparison() {}

  static boolean holds(Node.Operator operator, Value left, Value right) {
    int order = compare(left, right);
    return switch (operator) {
      case EQUAL -> order == 0;
      case UNEQUAL -> order != 0;
      case LESS -> order < 0;
      case AT_MOST -> order <= 0;
      case MORE -> order > 0;
      case AT_LEAST -> order >= 0;
      default -> throw new IllegalArgumentException(operator + " does not compare");
    };
  }

  /** Negative, zero or positive, as {@code left} comes before, with or after {@code right}. */
  static int compare(Value left, Value right) {
    Value a = filled(Coercion.sound(left), right);
    Value b = filled(Coercion.sound(right), a);
    if (rank(a) != rank(b)) {
      return Integer.compare(rank(a), rank(b));
    }
    if (a instanceof Value.Number x && b instanceof Value.Number y) {
      return Arithmetic.isSame(x.value(), y.value()) ? 0 : Double.compare(x.value(), y.value());
    }
    if (a instanceof Value.Truth x && b instanceof Value.Truth y) {
      return Boolean.compare(x.value(), y.value());
    }
    return folded(Coercion.text(a)).compareTo(folded(Coercion.text(b)));
  }

  private static Value filled(Value value, Value beside) {
    if (!(value instanceof Value.Blank)) {
      return value;
    }
    if (beside instanceof Value.Text) {
      return new Value.Text("");
    }
    return beside instanceof Value.Truth ? new Value.Truth(false) : new Value.Number(0);
  }

  static int rank(Value value) {
    if (value instanceof Value.Number || value instanceof Value.Blank) {
      return 0;
    }
    return value instanceof Value.Text ? 1 : 2;
  }

  static String folded(String text) {
    return text.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
  }
}
