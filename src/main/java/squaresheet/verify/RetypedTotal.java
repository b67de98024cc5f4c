package squaresheet.verify;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;

/** Is a total typed again instead of read from where it is worked out? */
final class RetypedTotal implements Check<TypedCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "retyped-total", Severity.WARNING, "A total is typed that is worked out elsewhere");

  private static final Pattern TOTAL = Pattern.compile(
      "(grand |contract |job |bid |quote )?(total|price|amount)( price| due)?:?",
      Pattern.CASE_INSENSITIVE);
  /** A retyped total is an old one: near, but no longer the same. */
  private static final double NEAR = 0.15;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean total = cell.cell().stored() instanceof Content.Numeric number
        && number.value() >= 100
        && TOTAL.matcher(cell.tab().label(cell.ref())).matches()
        && cell.tab().tableAt(cell.ref()).isEmpty()
        && !cell.book().links().isRead(cell.at());
    return total ? source(cell).limit(1) : Stream.empty();
  }

  private static Stream<Finding> source(TypedCell cell) {
    double typed = ((Content.Numeric) cell.cell().stored()).value();
    return cell.book().formulas().keySet().stream()
        .filter(at -> !at.sheet().equals(cell.tab().name()))
        .filter(at -> TOTAL.matcher(cell.book().tab(at.sheet()).label(at.ref())).matches())
        .filter(at -> Math.abs(cell.book().number(at).orElse(0) - typed) <= NEAR * typed)
        .filter(at -> cell.book().number(at).isPresent())
        .map(at -> says(cell, at));
  }

  private static Finding says(TypedCell cell, Address source) {
    String says = "is typed; the total is worked out at " + source + ", where it is "
        + Shown.of(cell.book().value(source)) + ", and the typed one will not follow; put ="
        + source;
    return Says.about(INFO, cell.book(), cell.at(), cell.book().value(source), says);
  }
}
