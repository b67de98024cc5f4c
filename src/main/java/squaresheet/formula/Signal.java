package squaresheet.formula;

import java.util.Locale;
import java.util.Set;

/**
 * Carries a spreadsheet error or a not-checked value out of a computation. It has no stack, keeps no suppressed ones and
 * holds a value that never changes, so the common ones are made once.
 */
@SuppressWarnings("StaticAssignmentOfThrowable")
final class Signal extends RuntimeException {

  private static final long serialVersionUID = 1;

  static final Signal VALUE = of("#VALUE!");
  static final Signal DIVISION = of("#DIV/0!");
  static final Signal NUMBER = of("#NUM!");
  static final Signal MISSING = of("#N/A");
  static final Signal REFERENCE = of("#REF!");
  static final Signal NAME = of("#NAME?");
  static final Signal NULL = of("#NULL!");

  private static final Set<String> CODES =
      Set.of("#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A");

  private final transient Value value;

  private Signal(Value value) {
    super(null, null, false, false);
    this.value = value;
  }

  private static Signal of(String code) {
    return new Signal(new Value.Fault(code));
  }

  /** Whether the text spells a spreadsheet error, in capital or small letters. */
  static boolean isCode(String text) {
    return CODES.contains(text.toUpperCase(Locale.ROOT));
  }

  /** For a spreadsheet error met on the way. */
  static Signal of(Value.Fault fault) {
    return new Signal(fault);
  }

  /** For something the library does not follow. */
  static Signal notChecked(String reason) {
    return new Signal(new Value.NotChecked(reason));
  }

  /** For a not-checked value met on the way. */
  static Signal of(Value.NotChecked unknown) {
    return new Signal(unknown);
  }

  Value value() {
    return value;
  }

  /** The value where it is a spreadsheet error; a not-checked value travels on. */
  Value fault() {
    if (value instanceof Value.NotChecked) {
      throw this;
    }
    return value;
  }
}
