package squaresheet.formula;

import java.util.Locale;

/** The order of values: numbers before texts before FALSE before TRUE; texts without regard to case. */
final class Comparison {

  private Comparison() {}

  static boolean holds(Node.Operator operator, Value left, Value right) {
    boolean equality = operator == Node.Operator.EQUAL || operator == Node.Operator.UNEQUAL;
    int order = equality ? compare(left, right) : order(left, right);
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

  /** As {@link #compare}, where it matters which comes first: texts that languages put in different orders are not checked. */
  static int order(Value left, Value right) {
    int order = compare(left, right);
    if (order != 0 && left instanceof Value.Text a && right instanceof Value.Text b) {
      requireOrdered(a.value(), b.value());
    }
    return order;
  }

  private static void requireOrdered(String left, String right) {
    String a = folded(left);
    String b = folded(right);
    int same = 0;
    while (same < a.length() && same < b.length() && a.charAt(same) == b.charAt(same)) {
      same++;
    }
    if (!isPlain(a, same) || !isPlain(b, same)) {
      throw Signal.notChecked(
          "which of '" + left + "' and '" + right + "' comes first depends on the country");
    }
  }

  /** Whether a text ends there, or goes on with a letter, digit or blank that sorts alike everywhere. */
  private static boolean isPlain(String text, int at) {
    return at >= text.length()
        || "abcdefghijklmnopqrstuvwxyz0123456789 ".indexOf(text.charAt(at)) >= 0;
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
