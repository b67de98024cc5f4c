package squaresheet.verify;

import java.util.List;
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

/** Is a total typed that is not the sum of the amounts above it? */
final class TypedTotalOff implements Check<TypedCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "typed-total-off", Severity.WARNING, "A typed total is not the sum of its parts");

  private static final Pattern TOTAL = Pattern.compile(
      "((grand|contract|job|bid|quote|sub|material|labou?r) ?-?)?total( price| bid| amount| cost)?:?",
      Pattern.CASE_INSENSITIVE);
  private static final Pattern ROUNDED = Pattern.compile(
      "(?<!\\p{L})(round(ed)?|approx|about|estimate only)", Pattern.CASE_INSENSITIVE);
  /** A total that is further off stands over something else. */
  private static final double FAR = 0.5;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean total = cell.cell().stored() instanceof Content.Numeric
        && TOTAL.matcher(cell.tab().label(cell.ref())).matches()
        && !cell.cell().isPercent()
        && cell.tab().tableAt(cell.ref()).isEmpty();
    return total ? off(cell) : Stream.empty();
  }

  private static Stream<Finding> off(TypedCell cell) {
    String words = cell.tab().wordsAbout(cell.ref());
    List<Ref> parts = parts(cell);
    double sum = parts.stream().mapToDouble(ref -> number(cell, ref)).sum();
    double typed = ((Content.Numeric) cell.cell().stored()).value();
    double off = Math.abs(sum - typed);
    boolean wrong = parts.size() >= 2
        && off > 0.005 * parts.size()
        && off <= FAR * Math.abs(sum)
        && !Words.saysMeasured(words)
        && !ROUNDED.matcher(words).find();
    return wrong ? Stream.of(says(cell, parts, sum)) : Stream.empty();
  }

  private static double number(TypedCell cell, Ref ref) {
    return cell.book().number(cell.tab().at(ref)).orElse(0);
  }

  /** The amounts right above, up to the first cell that is none; nothing where one of them is of another kind. */
  private static List<Ref> parts(TypedCell cell) {
    List<Ref> parts = IntStream.iterate(cell.ref().row() - 1, row -> row >= 0, row -> row - 1)
        .mapToObj(row -> new Ref(row, cell.ref().column()))
        .takeWhile(ref -> cell.book().number(cell.tab().at(ref)).isPresent())
        .takeWhile(ref -> !cell.tab().cell(ref).isBlank())
        .toList();
    boolean alike = parts.stream()
        .allMatch(ref -> cell.tab().cell(ref).format().equals(cell.cell().format())
            && !cell.tab().label(ref).isEmpty()
            && !Words.isTotal(cell.tab().label(ref))
            && !Addition.isNoPart(cell.tab().label(ref))
            && !Words.saysOutside(cell.tab().wordsAbout(ref)));
    return alike ? parts : List.of();
  }

  private static Finding says(TypedCell cell, List<Ref> parts, double sum) {
    String says = "is typed, but the " + parts.size() + " amounts above it, from "
        + parts.get(parts.size() - 1) + " to " + parts.get(0) + ", make " + Shown.number(sum)
        + "; put their sum there";
    return Says.about(INFO, cell.book(), cell.at(), new Value.Number(sum), says);
  }
}
