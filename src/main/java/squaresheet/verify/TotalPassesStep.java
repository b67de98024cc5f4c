package squaresheet.verify;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/** Does a final total pass by a subtotal or a tax above it, or what a tax in it is charged on? */
final class TotalPassesStep implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "total-passes-step", Severity.WARNING, "A total passes by an amount on the way to it");

  private static final Pattern STEP = Pattern.compile(
      "(?<!\\p{L})(sub ?-?totals?|sum|net|net total)(?!\\p{L})", Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    if (!Words.isTotal(cell.label())
        || STEP.matcher(cell.label()).find()
        || Words.saysOutside(cell.tab().wordsAbout(cell.at().ref()))) {
      return Stream.empty();
    }
    Map<Address, Integer> parts = AmountParts.of(cell);
    Optional<Finding> passed =
        above(cell).filter(step -> isPassed(step, parts)).findFirst().map(step -> says(cell, step));
    return passed.or(() -> untaxed(cell, parts)).stream();
  }

  /** The formulas above, up to the first empty cell. */
  private static Stream<FormulaCell> above(FormulaCell cell) {
    Ref at = cell.at().ref();
    return Stream.iterate(at.row() - 1, row -> row >= 0, row -> row - 1)
        .map(row -> new Ref(row, at.column()))
        .takeWhile(ref -> !cell.tab().cell(ref).isBlank())
        .map(cell.tab()::at)
        .flatMap(step -> FormulaCell.of(cell.book(), step).stream());
  }

  /** A step that nobody reads, made of what the total has too, and of something that it has not. */
  private static boolean isPassed(FormulaCell step, Map<Address, Integer> parts) {
    boolean tax = RateWords.isTax(step.label());
    boolean named = tax || STEP.matcher(step.label()).find();
    if (!named
        || step.book().links().isRead(step.at())
        || step.book().number(step.at()).orElse(0) == 0) {
      return false;
    }
    Map<Address, Integer> own = AmountParts.of(step);
    boolean near = Stream.concat(
            own.keySet().stream(), step.reads().stream().filter(Cells::isOne).map(Cells::first))
        .anyMatch(parts::containsKey);
    return near
        && (own.isEmpty() ? tax : own.keySet().stream().anyMatch(part -> !parts.containsKey(part)));
  }

  /** A tax among the parts that is charged on an amount of which nothing else is in. */
  private static Optional<Finding> untaxed(FormulaCell cell, Map<Address, Integer> parts) {
    return parts.keySet().stream()
        .filter(tax -> RateWords.isTax(RateWords.label(cell.book(), tax)))
        .flatMap(tax -> FormulaCell.of(cell.book(), tax).stream())
        .flatMap(tax -> base(tax)
            .filter(base -> isOut(cell, tax, base, parts))
            .map(base -> says(cell, tax, base)))
        .findFirst();
  }

  private static Stream<Address> base(FormulaCell tax) {
    return Nodes.all(tax.tree(), Node.Binary.class)
        .filter(product -> product.operator() == Node.Operator.TIMES)
        .filter(product ->
            product.parts().stream().anyMatch(side -> RateWords.rate(tax, side).isPresent()))
        .flatMap(product -> product.parts().stream())
        .filter(side -> RateWords.rate(tax, side).isEmpty())
        .flatMap(side -> RateWords.cell(tax, side).stream());
  }

  private static boolean isOut(
      FormulaCell cell, FormulaCell tax, Address base, Map<Address, Integer> parts) {
    Set<Address> others = new HashSet<>(parts.keySet());
    others.remove(tax.at());
    Set<Address> lean = cell.book().links().dependents(Set.of(base));
    return !parts.containsKey(base) && others.stream().noneMatch(lean::contains);
  }

  private static Finding says(FormulaCell cell, FormulaCell step) {
    String says =
        "is " + cell.shown() + ", and passes by " + step.at() + " ('" + step.label() + "', "
            + Shown.of(step.value()) + "), which nobody else reads and of which not all is in it";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }

  private static Finding says(FormulaCell cell, FormulaCell tax, Address base) {
    String says = "is " + cell.shown() + ", which has the tax at " + tax.at() + " in it, but not "
        + base + " ('" + RateWords.label(cell.book(), base) + "', "
        + Shown.of(cell.book().value(base)) + "), which that tax is charged on";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
