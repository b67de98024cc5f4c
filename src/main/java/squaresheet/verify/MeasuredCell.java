package squaresheet.verify;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.formula.Inference;
import squaresheet.formula.Inference.Clash;
import squaresheet.formula.Inference.Kind;
import squaresheet.units.Unit;

/**
 * A formula whose numbers have units that are known, the first of its run.
 *
 * @param cell the formula
 * @param clashes where its units surely do not agree
 */
record MeasuredCell(FormulaCell cell, List<Clash> clashes) {

  static Stream<MeasuredCell> of(List<FormulaCell> cells, KnownUnits units) {
    return cells.stream().filter(RunStart::is).flatMap(cell -> of(cell, units).stream());
  }

  private static Optional<MeasuredCell> of(FormulaCell cell, KnownUnits units) {
    Optional<Unit> wanted = units.written(cell.at());
    Inference inference =
        Inference.of(cell.formula(), cell.book().reckoning().scope(cell.at()), units, wanted);
    boolean known = inference.unit().isPresent() || !inference.clashes().isEmpty();
    return known ? Optional.of(new MeasuredCell(cell, inference.sure())) : Optional.empty();
  }

  /** The parts where one of these does not agree. */
  Stream<Clash> clashes(Kind first, Kind... others) {
    Set<Kind> kinds = EnumSet.of(first, others);
    return clashes.stream().filter(clash -> kinds.contains(clash.kind()));
  }

  /** Says what does not agree, with the formula and both sides. */
  Finding says(CheckInfo info, Clash clash) {
    boolean whole = clash.part().equals(cell.formula().toString());
    String says = "is " + cell.shown() + (whole ? ": " : ", with " + clash.part() + " in it: ")
        + clash.sentence();
    return Says.about(info, cell.book(), cell.at(), says);
  }
}
