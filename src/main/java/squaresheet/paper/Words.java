package squaresheet.paper;

import java.util.Locale;
import squaresheet.courses.Interval;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/** Turns of phrase shared by drawings and sheets. */
final class Words {

  /** What every sheet of a plane says that its shingle may not be laid on. */
  static final String TOO_FLAT = "TOO FLAT FOR THIS SHINGLE, DO NOT LAY.";

  private Words() {}

  /** {@code course} or {@code 5 courses}. */
  static String courses(int number) {
    return number == 1 ? "course" : number + " courses";
  }

  /** {@code 1 course} or {@code 5 courses}. */
  static String counted(long number) {
    return number == 1 ? "1 course" : number + " courses";
  }

  /** The exposure laid: on the tape where it is on a mark, else in decimals. */
  static String exposure(Interval interval, Graduation tape) {
    long units = interval.laid().units();
    long each = units / interval.courses();
    boolean whole = each * interval.courses() == units && each % tape.mark().units() == 0;
    return whole
        ? new Length(each).showOnTape(tape)
        : decimal(interval.exposureLaid().inches(), tape);
  }

  /** A length that is on no tape, in decimals. */
  static String decimal(double inches, Graduation tape) {
    return tape.isImperial()
        ? String.format(Locale.ROOT, "%.2f\"", inches)
        : String.format(Locale.ROOT, "%.1f mm", inches * 25.4);
  }
}
