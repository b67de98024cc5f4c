package squaresheet.courses;

import java.util.List;
import java.util.stream.Collectors;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/**
 * The marks to pull at one station, measured up the slope from the upper edge of the first course.
 *
 * @param station where
 * @param at the marks, rising
 */
public record Marks(Station station, List<Length> at) {

  public Marks {
    at = List.copyOf(at);
  }

  /** For people: the marks in inches or millimetres, as they are read from a tape hooked on the line. */
  public String show(Graduation graduation) {
    return at.stream().map(mark -> Tape.show(mark, graduation)).collect(Collectors.joining(", "));
  }
}
