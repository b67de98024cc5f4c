package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.formula.Value;
import squaresheet.sheet.Content;

/**
 * A number typed where a run has its formula, and nobody says that it was meant so.
 *
 * @param along the item
 * @param value the number
 * @param expected what the formula would make
 */
record TypedInRun(int along, double value, Value expected) {

  static Stream<TypedInRun> in(Fill fill) {
    return fill.exceptions()
        .filter(along -> fill.tab().isTypedNumber(fill.ref(along)))
        .filter(along -> !fill.isSeed(along))
        .filter(along -> !Words.saysMeasured(fill.tab().wordsAbout(fill.ref(along))))
        .mapToObj(along -> new TypedInRun(along, number(fill, along), fill.expected(along)))
        .filter(typed -> typed.expected().isChecked());
  }

  private static double number(Fill fill, int along) {
    return ((Content.Numeric) fill.cell(along).stored()).value();
  }

  /** Whether the number is the formula's value, as far as a person would have typed it. */
  boolean isRight() {
    return expected instanceof Value.Number number
        && (Shown.same(number.value(), value) || isRounded(number.value()));
  }

  /** Typed with fewer decimals than the value has, but rightly rounded. */
  private boolean isRounded(double exact) {
    int scale = java.math.BigDecimal.valueOf(value).stripTrailingZeros().scale();
    return scale >= 1 && Math.abs(exact - value) <= 0.5 * Math.pow(10, -scale);
  }
}
