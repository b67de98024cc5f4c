package squaresheet.verify;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** Does a total add an amount that is already in another of its parts? */
final class TotalTakesPartTwice implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("total-takes-part-twice", Severity.WARNING, "A total takes an amount twice");

  /** Around a building two sides are alike, and a length is rightly taken twice. */
  private static final Pattern LENGTH = Pattern.compile(
      "(?<!\\p{L})(perimeter|around|lengths?|lf|ft|feet|metres?|meters?|m|eaves?|rakes?|ridges?|hips?|valleys?|edges?|"
          + "walls?|sides?|areas?|sf|sq|squares?)(?!\\p{L})|m²",
      Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    boolean adds = cell.tree() instanceof Node.Binary sum
        && sum.operator() == Node.Operator.PLUS
        && Words.isTotal(cell.label())
        && !LENGTH
            .matcher(cell.label() + " " + cell.tab().headings(cell.at().ref()))
            .find();
    return adds
        ? AmountParts.shared(cell)
            .filter(part -> cell.book().number(part).orElse(0) != 0)
            .limit(1)
            .map(part -> says(cell, part))
        : Stream.empty();
  }

  private static Finding says(FormulaCell cell, Address part) {
    double once =
        cell.book().number(cell.at()).orElse(0) - cell.book().number(part).orElse(0);
    String says = "is " + cell.shown() + ", which has " + part + " ('"
        + RateWords.label(cell.book(), part) + "', " + Shown.of(cell.book().value(part))
        + ") in it twice; with it once the total makes " + Shown.number(once);
    return Says.about(INFO, cell.book(), cell.at(), new Value.Number(once), says);
  }
}
