package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Ref;

/** Is a typed rate read by no formula, while the rate typed beside it is? */
final class RateNobodyReads implements Check<TypedCell> {

  private static final CheckInfo INFO =
      new CheckInfo("rate-nobody-reads", Severity.WARNING, "A rate has no effect");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean idle = isRate(cell, cell.ref())
        && !cell.book().links().isRead(cell.at())
        && !Words.saysOutside(cell.tab().wordsAbout(cell.ref()))
        && cell.tab().tableAt(cell.ref()).isEmpty();
    return idle && besideIsRead(cell) ? Stream.of(says(cell)) : Stream.empty();
  }

  private static boolean besideIsRead(TypedCell cell) {
    return Stream.of(-1, 1)
        .filter(step -> cell.ref().row() + step >= 0)
        .map(step -> new Ref(cell.ref().row() + step, cell.ref().column()))
        .anyMatch(
            ref -> isRate(cell, ref) && cell.book().links().isRead(cell.tab().at(ref)));
  }

  private static boolean isRate(TypedCell cell, Ref ref) {
    return RateWords.isRate(cell.book(), cell.tab().at(ref));
  }

  private static Finding says(TypedCell cell) {
    String says = "is '" + cell.tab().label(cell.ref())
        + "', but no formula reads it, while the rate beside it is used; put it where it belongs, or take it out";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
