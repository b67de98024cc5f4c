package squaresheet.verify;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;

/** Is a negative number typed among quantities, with no word of a credit? */
final class NegativeQuantity implements Check<TypedCell> {

  private static final CheckInfo INFO =
      new CheckInfo("negative-quantity", Severity.WARNING, "A quantity is negative");

  private static final Pattern QUANTITY = Pattern.compile(
      "(?<!\\p{L})(quantity|qty|packs?|bundles?|rolls?|length|width|run|area|squares?|pieces?|hours?|count|eave|rake)(?!\\p{L})",
      Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean negative = cell.cell().stored() instanceof Content.Numeric number && number.value() < 0;
    boolean quantity = negative
        && QUANTITY.matcher(cell.heading()).find()
        && !Words.saysCredit(cell.tab().wordsAbout(cell.ref()))
        && !cell.heading().toLowerCase(Locale.ROOT).contains("offset")
        && cell.book().links().isRead(cell.at());
    return quantity && othersArePositive(cell) ? Stream.of(says(cell)) : Stream.empty();
  }

  private static boolean othersArePositive(TypedCell cell) {
    int row = cell.ref().row();
    List<Double> others = IntStream.rangeClosed(Math.max(0, row - 10), row + 10)
        .filter(at -> at != row)
        .mapToObj(at -> cell.book().number(cell.tab().at(new Ref(at, cell.ref().column()))))
        .filter(OptionalDouble::isPresent)
        .map(OptionalDouble::getAsDouble)
        .toList();
    return !others.isEmpty() && others.stream().allMatch(value -> value >= 0);
  }

  private static Finding says(TypedCell cell) {
    double value = ((Content.Numeric) cell.cell().stored()).value();
    String says = "is " + Shown.number(value)
        + " in a column of quantities, which takes off the total; if it is a"
        + " return or a credit, say so in the row, otherwise it must be " + Shown.number(-value);
    return Says.about(INFO, cell.book(), cell.at(), new Value.Number(-value), says);
  }
}
