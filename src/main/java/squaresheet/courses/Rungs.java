package squaresheet.courses;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import squaresheet.units.Direction;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/** Marks one above the other, each on the tape, none further from the one below than may be. */
final class Rungs {

  private Rungs() {}

  /**
   * @param count how many
   * @param exact where the mark with this number (1 and up) would stand on a tape without graduations
   * @param most the greatest distance between two marks; also from the line they are pulled from
   */
  static List<Length> of(int count, IntFunction<Length> exact, Length most, Graduation tape) {
    Length step = most.roundedTo(tape, Direction.DOWN);
    Length widest = step.isPositive() ? step : most;
    List<Length> marks = new ArrayList<>(count);
    Length below = Length.ZERO;
    for (int number = 1; number <= count; number++) {
      Length wanted = exact.apply(number).roundedTo(tape, Direction.DOWN);
      Length reached = below.plus(widest);
      below = wanted.compareTo(reached) > 0 ? reached : wanted;
      marks.add(below);
    }
    return List.copyOf(marks);
  }
}
