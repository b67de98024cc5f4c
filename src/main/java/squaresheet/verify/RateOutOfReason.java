package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;

/** Is a rate for tax, markup or overhead typed as 20 where formulas take it as a ratio? */
final class RateOutOfReason implements Check<TypedCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "rate-out-of-reason",
      Severity.WARNING,
      "A rate is typed as a percentage and used as a ratio");

  /** A rate that more than doubles an amount is no tax, and hardly a markup. */
  private static final double MOST = 1.5;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean much = cell.cell().stored() instanceof Content.Numeric number
        && number.value() >= MOST
        && number.value() <= 100;
    boolean used = much
        && RateWords.saysRate(cell.tab().label(cell.ref()))
        && cell.tab().tableAt(cell.ref()).isEmpty()
        && FormulaCell.readersOf(cell.book(), cell.at())
            .anyMatch(reader -> isTakenAsRatio(reader, cell.at()));
    return used ? Stream.of(says(cell)) : Stream.empty();
  }

  /** Whether it is added to one, or an amount called a tax or a markup is its plain product. */
  private static boolean isTakenAsRatio(FormulaCell reader, Address rate) {
    boolean hundred = Nodes.all(reader.tree(), Node.Number.class)
        .anyMatch(number -> number.value() == 100 || number.value() == 0.01);
    boolean onOne = Nodes.all(reader.tree(), Node.Binary.class)
        .anyMatch(sum -> AmountParts.isOneAnd(reader, sum, rate));
    boolean product = RateWords.saysRate(reader.label())
        && Nodes.all(reader.tree(), Node.Binary.class)
            .anyMatch(times -> times.operator() == Node.Operator.TIMES
                && times.parts().stream().anyMatch(side -> is(reader, side, rate)));
    return !hundred && (onOne || product);
  }

  private static boolean is(FormulaCell reader, Node part, Address rate) {
    return RateWords.cell(reader, part).filter(rate::equals).isPresent();
  }

  private static Finding says(TypedCell cell) {
    double typed = ((Content.Numeric) cell.cell().stored()).value();
    String says = "is '" + cell.tab().label(cell.ref()) + "' of " + Shown.number(typed)
        + ", and formulas take it as a ratio, " + Shown.number(typed * 100) + " percent; "
        + Shown.number(typed) + " percent is " + Shown.number(typed / 100);
    return Says.about(INFO, cell.book(), cell.at(), new Value.Number(typed / 100), says);
  }
}
