package squaresheet.tape;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/**
 * What is said once about a column of lengths.
 *
 * @param unit the unit of bare numbers
 * @param marks the sheet's decimal mark
 */
record LengthColumn(TapeUnit unit, Marks marks) {

  /** Decimals that feet and inches typed as feet.inches leave; .5 is left out because it is also half a foot. */
  private static final Set<String> INCHES =
      Set.of("1", "2", "3", "4", "6", "7", "8", "9", "10", "11");

  /** Longer digits are no length on a roof. */
  private static final int LONGEST_TEXT = 15;

  List<Finding> remarks(List<Written> column, Where heading) {
    Decimals decimals = marks.decimals();
    List<String> bare =
        column.stream().flatMap(written -> bare(written, decimals).stream()).toList();
    if (bare.isEmpty()) {
      return List.of();
    }
    return Stream.concat(Stream.of(unitTaken(bare, heading)), feetInches(bare, heading).stream())
        .toList();
  }

  /** The digits of a bare number, with a decimal point. */
  private static Optional<String> bare(Written written, Decimals decimals) {
    if (written instanceof Written.Number number) {
      boolean plain = Double.isFinite(number.value()) && !Shown.isDate(number);
      return plain ? Optional.of(Shown.number(number.value())) : Optional.empty();
    }
    String plain = Glyphs.plain(((Written.Text) written).text());
    Decimals.Decimal number = decimals.read(plain, false);
    return number.kind() == Decimals.Kind.PLAIN && plain.length() <= LONGEST_TEXT
        ? Optional.of(number.value().toPlainString())
        : Optional.empty();
  }

  private Finding unitTaken(List<String> bare, Where heading) {
    String numbers = bare.size() == 1 ? "1 bare number is" : bare.size() + " bare numbers are";
    return new Spot(heading, bare.get(0))
        .say(
            Complaint.BARE_UNIT,
            "",
            numbers + " taken in " + unit.word() + ", the unit this sheet declares");
  }

  private Optional<Finding> feetInches(List<String> bare, Where heading) {
    List<String> broken =
        bare.stream().filter(digits -> decimalsOf(digits).matches(".*[1-9].*")).toList();
    boolean suspicious = unit == TapeUnit.FEET
        && !broken.isEmpty()
        && broken.stream().allMatch(digits -> INCHES.contains(decimalsOf(digits)));
    return suspicious ? Optional.of(askFeetInches(broken, heading)) : Optional.empty();
  }

  private static String decimalsOf(String digits) {
    int point = digits.indexOf('.');
    return point < 0 ? "" : digits.substring(point + 1);
  }

  private static Finding askFeetInches(List<String> broken, Where heading) {
    String first = broken.get(0);
    Length asFeet =
        Length.nearestMillimetres(new BigDecimal(first).multiply(TapeUnit.FEET.millimetres()));
    String whole = first.substring(0, first.indexOf('.'));
    Length asInches =
        Length.of(whole.isEmpty() ? 0 : Long.parseLong(whole), Long.parseLong(decimalsOf(first)));
    String all = broken.size() == 1
        ? "the only one with decimals"
        : "like all " + broken.size() + " with decimals";
    return new Spot(heading, first)
        .say(
            Complaint.FEET_INCHES,
            asInches.toString(),
            "feet.inches? bare " + first + ", " + all + ", can be "
                + first + " feet (" + asFeet.show(Graduation.SIXTEENTH)
                + ") or " + asInches + "; taken as feet, must be written with its marks");
  }
}
