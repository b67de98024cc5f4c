package squaresheet.courses;

import squaresheet.units.Direction;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/** How a length is called out to someone at the other end of the tape: inches all the way, no feet. */
final class Tape {

  private static final Length INCH = Length.ofInches(1);

  private Tape() {}

  /** {@code 28 1/8"} or {@code 714.4 mm}; 168 in stays 168 in, because that is what the tape reads. */
  static String show(Length length, Graduation graduation) {
    Length marked = length.roundedTo(graduation, Direction.NEAREST);
    if (!graduation.isImperial() || marked.units() < Length.ofInches(12).units()) {
      return marked.show(graduation);
    }
    Length whole = marked.roundedTo(Graduation.INCH, Direction.DOWN);
    Length rest = marked.minus(whole);
    String inches = Long.toString(whole.units() / INCH.units());
    return rest.isZero() ? inches + "\"" : inches + " " + rest.show(graduation);
  }
}
