package squaresheet.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.EaveStarter;
import squaresheet.courses.Interval;
import squaresheet.courses.StarterJoints;
import squaresheet.units.Graduation;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

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

  /** {@code 24", and one cut to 12" at 31' 2"}: the pieces of a starter that are not whole, in the order they are laid. */
  static String cuts(List<StarterJoints.Cut> cuts, Graduation tape) {
    StringJoiner said = new StringJoiner(", and one cut to ");
    for (StarterJoints.Cut cut : cuts) {
      String at = cut.from().isZero() ? "" : " at " + cut.from().show(tape);
      said.add(cut.piece().showOnTape(tape) + at);
    }
    return said.toString();
  }

  /** {@code eave}, or where a plane has several {@code eave 2 of 3 from the left}. */
  static String eave(CoursePlan plan, EaveStarter starter) {
    List<EaveStarter> eaves = plan.starters().stream()
        .sorted(Comparator.comparing(
            eave -> eave.side().from().x().plus(eave.side().to().x())))
        .toList();
    return eaves.size() == 1
        ? "eave"
        : "eave " + (eaves.indexOf(starter) + 1) + " of " + eaves.size() + " from the left";
  }

  /** {@code 6:12}; on a metric tape with its angle, {@code 30° (6.93:12)}. */
  static String pitch(Pitch pitch, Graduation tape) {
    return tape.isImperial()
        ? pitch.show()
        : String.format(
            Locale.ROOT,
            "%s° (%s)",
            BigDecimal.valueOf(pitch.toDegrees())
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString(),
            pitch.show());
  }

  /** A length that is on no tape, in decimals. */
  static String decimal(double inches, Graduation tape) {
    return tape.isImperial()
        ? String.format(Locale.ROOT, "%.2f\"", inches)
        : String.format(Locale.ROOT, "%.1f mm", inches * 25.4);
  }
}
