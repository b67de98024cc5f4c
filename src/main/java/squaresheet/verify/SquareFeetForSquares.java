package squaresheet.verify;

import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.units.Unit;

/** Is a number of square feet typed where squares are meant? */
final class SquareFeetForSquares implements Check<TypedMeasure> {

  private static final CheckInfo INFO = new CheckInfo(
      "square-feet-for-squares", Severity.WARNING, "Square feet are typed where squares are meant");

  /** Below this an area is a plane's, and its number may be anything. */
  private static final double LEAST = 200;
  /** Two takeoffs of one roof agree as well as that. */
  private static final double AGREES = 0.02;

  private static final Unit SQUARE_FEET = Unit.parse("sq ft");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedMeasure typed) {
    return typed.squares() < LEAST
        ? Stream.empty()
        : same(typed).map(other -> says(typed, other)).stream();
  }

  /** An area in the book that is this number of square feet. */
  private static Optional<TypedMeasure.Other> same(TypedMeasure typed) {
    return typed.others().stream()
        .filter(other ->
            Math.abs(other.value() * other.unit().factorTo(SQUARE_FEET) / typed.squares() - 1)
                < AGREES)
        .findFirst();
  }

  private static Finding says(TypedMeasure typed, TypedMeasure.Other other) {
    double squares = typed.squares() / 100;
    String says = "is a typed " + Shown.number(typed.squares()) + " in a cell for squares, but "
        + other.at() + " is " + other.unit().show(Shown.number(other.value()))
        + ", so these are square feet; " + Shown.number(typed.squares()) + " sq ft are "
        + Shown.number(squares) + " squares";
    return Says.about(
        INFO, typed.cell().book(), typed.cell().at(), new Value.Number(squares), says);
  }
}
