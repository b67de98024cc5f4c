package squaresheet.verify;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Formula;
import squaresheet.formula.Value;

/** Does a formula double the underlayment at 4:12, where single coverage begins? */
final class BandTakesInLimit implements Check<Underlayment> {

  private static final CheckInfo INFO = new CheckInfo(
      "band-takes-in-limit", Severity.WARNING, "Underlayment is doubled at 4:12 itself");

  private static final double LIMIT = 4;
  /** People name pitches in halves: within a quarter beside the limit lies no other. */
  private static final double STEP = 0.25;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Underlayment plane) {
    boolean doubled = plane.rise() == LIMIT
        && plane.layers() == 2
        && !Words.saysPolicy(plane.words())
        && !Words.saysFlat(plane.words());
    Optional<Formula> formula = plane.book().formula(plane.at());
    return doubled && formula.isPresent() && endsHere(plane) && !isStated(plane)
        ? Stream.of(says(plane, formula.get()))
        : Stream.empty();
  }

  /** Whether the plane would have two layers just below 4:12 and one just above, however that is spelled. */
  private static boolean endsHere(Underlayment plane) {
    return layers(plane, LIMIT - STEP) == 2 && layers(plane, LIMIT + STEP) == 1;
  }

  private static double layers(Underlayment plane, double rise) {
    Reckoning so =
        plane.book().reckoning().putting(Map.of(plane.pitchAt(), new Value.Number(rise)));
    return Shown.number(so.value(plane.at())).orElse(0);
  }

  /** Whether the limit stands in a cell of its own, where it is a rule that somebody states. */
  private static boolean isStated(Underlayment plane) {
    Book book = plane.book();
    return book.links().behind(List.of(plane.at())).stream()
        .flatMap(formula -> book.links().reads(formula).stream())
        .flatMap(Cells::each)
        .filter(cell -> !cell.equals(plane.pitchAt()) && !book.cell(cell).isFormula())
        .flatMapToDouble(cell -> book.number(cell).stream())
        .anyMatch(number -> number >= LIMIT && number < LIMIT + STEP);
  }

  private static Finding says(Underlayment plane, Formula formula) {
    String says = "is =" + formula
        + ", which doubles the underlayment at 4:12; single coverage begins there, so"
        + " the limit is 'less than 4' (IRC R905.2.2)";
    return Says.about(INFO, plane.book(), plane.at(), new Value.Number(1), says);
  }
}
