package squaresheet.verify;

import java.math.BigDecimal;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Content;

/** Is an item code of more than fifteen digits kept as a number, whose last digits are lost? */
final class NumberTooLongForCode implements Check<TypedCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "number-too-long-for-code", Severity.WARNING, "A long code lost its last digits");

  /** A cell keeps fifteen digits of a number (ECMA-376 leaves it to 64-bit numbers; the programs show fifteen). */
  private static final double SIXTEEN_DIGITS = 1e15;

  private static final double NINETEEN_DIGITS = 1e19;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean lost = cell.cell().stored() instanceof Content.Numeric number
        && number.value() >= SIXTEEN_DIGITS
        && number.value() < NINETEEN_DIGITS;
    return lost ? Stream.of(says(cell, (Content.Numeric) cell.cell().stored())) : Stream.empty();
  }

  private static Finding says(TypedCell cell, Content.Numeric number) {
    String digits = new BigDecimal(number.value()).toBigInteger().toString();
    String says = "is a number of " + digits.length()
        + " digits, of which a spreadsheet program keeps fifteen; a code that long must be typed as text,"
        + " with ' before it, or no lookup finds it";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
