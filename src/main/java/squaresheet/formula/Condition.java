package squaresheet.formula;

import java.util.Locale;
import java.util.Optional;
import squaresheet.formula.Node.Operator;

/** A condition as SUMIF and COUNTIF take it: a value, a comparison such as {@code ">=4"}, a text with * and ?. */
final class Condition {

  private final Operator operator;
  private final Value wanted;
  private final Wildcards pattern;

  private Condition(Operator operator, Value wanted, Wildcards pattern) {
    this.operator = operator;
    this.wanted = wanted;
    this.pattern = pattern;
  }

  static Condition of(Value value) {
    if (value instanceof Value.Text text) {
      return read(text.value());
    }
    Value wanted = value instanceof Value.Blank ? new Value.Number(0) : value;
    return new Condition(Operator.EQUAL, wanted, null);
  }

  private static Condition read(String text) {
    for (Operator operator : new Operator[] {
      Operator.AT_MOST,
      Operator.AT_LEAST,
      Operator.UNEQUAL,
      Operator.LESS,
      Operator.MORE,
      Operator.EQUAL
    }) {
      if (text.startsWith(operator.spelling())) {
        return compared(operator, text.substring(operator.spelling().length()), true);
      }
    }
    return compared(Operator.EQUAL, text, false);
  }

  private static Condition compared(Operator operator, String operand, boolean spelled) {
    if (operand.isEmpty() && spelled) {
      return new Condition(operator, new Value.Blank(), null);
    }
    Optional<Value> typed = typed(operand);
    if (typed.isPresent()) {
      return new Condition(operator, typed.get(), null);
    }
    return new Condition(operator, new Value.Text(operand), Wildcards.of(operand));
  }

  /** A number, a truth or an error spelled as text. */
  static Optional<Value> typed(String text) {
    if (text.equalsIgnoreCase("TRUE") || text.equalsIgnoreCase("FALSE")) {
      return Optional.of(new Value.Truth(text.equalsIgnoreCase("TRUE")));
    }
    if (Signal.isCode(text)) {
      return Optional.of(new Value.Fault(text.toUpperCase(Locale.ROOT)));
    }
    try {
      return text.isBlank() ? Optional.empty() : Optional.of(Value.of(NumberText.read(text)));
    } catch (Signal notANumber) {
      return Optional.empty();
    }
  }

  /** The number, or text without * and ?, that a cell must be equal to; empty where the condition is something else. */
  Optional<Value> equalTo() {
    boolean plain = wanted instanceof Value.Number
        || (wanted instanceof Value.Text text && text.value().matches("[^*?~]+"));
    return operator == Operator.EQUAL && plain ? Optional.of(wanted) : Optional.empty();
  }

  /** Whether a cell fulfils the condition. */
  boolean holds(Value value) {
    boolean equal = operator == Operator.EQUAL;
    if (equal || operator == Operator.UNEQUAL) {
      return matches(value) == equal;
    }
    boolean comparable = !(value instanceof Value.Blank)
        && !(value instanceof Value.Fault)
        && !(wanted instanceof Value.Blank)
        && Comparison.rank(value) == Comparison.rank(wanted);
    return comparable && Comparison.holds(operator, value, wanted);
  }

  /** Whether a text in a cell is that number; digits alone are in every program, $5 or 5% only in some. */
  private static boolean isNumberAsText(String text, Value.Number number) {
    Optional<Value> typed = typed(text);
    if (typed.isEmpty() || !(typed.get() instanceof Value.Number read)) {
      return false;
    }
    boolean same = Comparison.compare(read, number) == 0;
    if (same && !NumberText.isPlain(text)) {
      throw Signal.notChecked(
          "whether the text '" + text + "' meets a condition differs between programs");
    }
    return same;
  }

  private boolean matches(Value value) {
    if (pattern != null) {
      boolean empty =
          value instanceof Value.Blank && ((Value.Text) wanted).value().isEmpty();
      return empty || (value instanceof Value.Text text && pattern.matches(text.value()));
    }
    if (wanted instanceof Value.Blank || value instanceof Value.Blank) {
      return wanted instanceof Value.Blank && value instanceof Value.Blank;
    }
    if (wanted instanceof Value.Fault fault) {
      return fault.equals(value);
    }
    if (value instanceof Value.Text text && wanted instanceof Value.Number number) {
      return isNumberAsText(text.value(), number);
    }
    return !(value instanceof Value.Fault)
        && Comparison.rank(value) == Comparison.rank(wanted)
        && Comparison.compare(value, wanted) == 0;
  }
}
