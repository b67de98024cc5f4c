package squaresheet.verify;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;

/** Is a waste rate typed as 10 where 0.10 is meant? */
final class WasteTypedAsPercent implements Check<TypedCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "waste-typed-as-percent", Severity.ERROR, "A waste rate is typed as a percentage of 1");

  private static final Pattern WASTE = Pattern.compile(
      "(?<!\\p{L})(waste|cut ?waste|cutting|allowance)(?!\\p{L})", Pattern.CASE_INSENSITIVE);
  /** No roof is cut up so badly that half of the shingles are waste. */
  private static final double MOST = 0.5;

  /** Through so many cells a rate is followed: a choice, a name for it, one more. */
  private static final int HANDED_ON = 3;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean much = cell.cell().stored() instanceof Content.Numeric number
        && number.value() > MOST
        && number.value() <= 100;
    boolean used = much && WASTE.matcher(cell.called()).find() && isAddedToOne(cell);
    return used ? Stream.of(says(cell)) : Stream.empty();
  }

  /** Whether a formula takes one plus, or one less, the rate, itself or by way of cells that hand it on as it stands. */
  private static boolean isAddedToOne(TypedCell cell) {
    Set<Address> same = new LinkedHashSet<>(Set.of(cell.at()));
    for (int step = 0; step < HANDED_ON; step++) {
      List<Address> readers = same.stream()
          .flatMap(at -> cell.book().links().readers(at).stream())
          .filter(reader -> cell.book().value(reader).equals(cell.book().value(cell.at())))
          .toList();
      same.addAll(readers);
    }
    return same.stream()
        .flatMap(at -> FormulaCell.readersOf(cell.book(), at)
            .filter(formula -> Nodes.all(formula.tree(), Node.Binary.class)
                .anyMatch(sum -> AmountParts.isOneAnd(formula, sum, at))))
        .findAny()
        .isPresent();
  }

  private static Finding says(TypedCell cell) {
    double typed = ((Content.Numeric) cell.cell().stored()).value();
    String says = "is a waste rate of " + Shown.number(typed)
        + ", and formulas take 1 and this rate, which makes "
        + Shown.number(1 + typed) + " times the need; " + Shown.number(typed) + " percent is "
        + Shown.number(typed / 100);
    return Says.about(INFO, cell.book(), cell.at(), new Value.Number(typed / 100), says);
  }
}
