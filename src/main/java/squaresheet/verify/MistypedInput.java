package squaresheet.verify;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.Fix;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;

/**
 * Whether a number that a formula would not make may well be right, and an input of that formula wrong: some number such as
 * people type in that input makes exactly what stands there.
 */
final class MistypedInput {

  /** What hangs on more inputs than these cannot be told. */
  private static final int MOST = 60;
  /** A mistyped number is seldom further off than this. */
  private static final double FAR = 20;

  private static final int HALVINGS = 60;
  /** What another program, or another order of the same arithmetic, makes of the last digits. */
  private static final double LAST_DIGITS = 1e-7;
  /** Prices are typed in cents, dimensions in hundredths. */
  private static final int DECIMALS = 2;

  private final Book book;
  private final Address cell;
  private final double typed;
  private final double near;
  private final Fix fix;
  private final boolean slip;

  private MistypedInput(Book book, Address cell, double typed, Fix fix, boolean slip) {
    this.book = book;
    this.cell = cell;
    this.typed = typed;
    this.fix = fix;
    this.slip = slip;
    near = Math.max(0.5 * Math.pow(10, -decimals(typed)), LAST_DIGITS * Math.abs(typed));
  }

  /**
   * Whether another number in one typed cell that the remedy counts with makes the number that is typed in the cell.
   *
   * @param slip whether that is a slip of the fingers already, so that only another such slip explains it as well
   */
  static boolean explains(Book book, Address cell, double typed, Fix fix, boolean slip) {
    MistypedInput cause = new MistypedInput(book, cell, typed, fix, slip);
    List<Address> inputs = cause.inputs();
    return inputs.size() > MOST || inputs.stream().anyMatch(cause::mayBe);
  }

  /** The typed numbers behind the remedy's formula. */
  private List<Address> inputs() {
    Set<Address> formulas =
        book.links().behind(reads().filter(book.formulas()::containsKey).toList());
    return Stream.concat(
            reads(),
            formulas.stream().flatMap(at -> book.links().reads(at).stream()).flatMap(Cells::each))
        .filter(at -> !at.equals(cell) && book.tab(at.sheet()).isTypedNumber(at.ref()))
        .distinct()
        .limit(MOST + 1L)
        .toList();
  }

  private Stream<Address> reads() {
    return fix.edits().stream()
        .filter(Edit.SetFormula.class::isInstance)
        .map(Edit.SetFormula.class::cast)
        .flatMap(
            edit -> book
                .references()
                .read(squaresheet.formula.Formula.of(edit.formula()).tree(), cell)
                .stream())
        .flatMap(Cells::each);
  }

  private boolean mayBe(Address input) {
    double now = ((Content.Numeric) book.cell(input).stored()).value();
    double low = now == 0 ? 0 : now / FAR;
    double high = now == 0 ? FAR : now * FAR;
    double less = makes(input, low) - typed;
    double more = makes(input, high) - typed;
    if (!(less * more <= 0)) {
      return false;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean below = (makes(input, middle) - typed) * less > 0;
      low = below ? middle : low;
      high = below ? high : middle;
    }
    return isTypable(input, high, now);
  }

  /** Whether a number near that one, with as many decimals as people type there, makes what is typed in the cell. */
  private boolean isTypable(Address input, double number, double now) {
    int decimals = IntStream.rangeClosed(
            Math.max(0, input.ref().row() - 3), input.ref().row() + 3)
        .mapToObj(row -> new Ref(row, input.ref().column()))
        .filter(book.tab(input.sheet())::isTypedNumber)
        .mapToInt(
            ref -> decimals(((Content.Numeric) book.tab(input.sheet()).cell(ref).stored()).value()))
        .max()
        .orElse(0);
    BigDecimal exact = BigDecimal.valueOf(number);
    return Stream.of(RoundingMode.FLOOR, RoundingMode.CEILING)
        .map(way -> exact.setScale(Math.max(DECIMALS, decimals), way).doubleValue())
        .filter(it -> Math.abs(makes(input, it) - typed) <= near)
        .anyMatch(it -> !slip || MistypedDigits.mayBe(now, it));
  }

  /** What the remedy would make with that number typed in an input; NaN where no number. */
  private double makes(Address input, double number) {
    Reckoning so = book.reckoning().putting(Map.of(input, new Value.Number(number)));
    return Shown.number(so.values(fix).getOrDefault(cell, new Value.Blank())).orElse(Double.NaN);
  }

  private static int decimals(double number) {
    return Math.max(0, BigDecimal.valueOf(number).stripTrailingZeros().scale());
  }
}
