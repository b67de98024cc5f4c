package squaresheet.binding;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;

/** What a cell says, as text or as a number. */
final class Cells {

  private static final Pattern HAS_DIGIT = Pattern.compile(".*\\p{Nd}.*");
  private static final int LONGEST_READING = 24;

  private Cells() {}

  /** The content as a person would type it; empty where there is none. */
  static String text(Cell cell) {
    if (cell.stored() instanceof Content.Text text) {
      return text.value().strip();
    }
    if (cell.stored() instanceof Content.Numeric number) {
      return plain(number.value());
    }
    if (cell.stored() instanceof Content.Truth truth) {
      return truth.value() ? "TRUE" : "FALSE";
    }
    return cell.stored() instanceof Content.Fault fault ? fault.code() : "";
  }

  /** The number without exponent and needless zeros. */
  static String plain(double value) {
    BigDecimal decimal = BigDecimal.valueOf(value).stripTrailingZeros();
    return (decimal.scale() < 0 ? decimal.setScale(0) : decimal).toPlainString();
  }

  static OptionalDouble number(Cell cell) {
    return cell.stored() instanceof Content.Numeric number
        ? OptionalDouble.of(number.value())
        : OptionalDouble.empty();
  }

  static Optional<String> words(Cell cell) {
    return cell.stored() instanceof Content.Text text && !text.value().isBlank()
        ? Optional.of(text.value().strip())
        : Optional.empty();
  }

  /** Whether the cell could hold a quantity: a number, a formula, an error, or a short text with a digit. */
  static boolean isLikeANumber(Cell cell) {
    return cell.isFormula()
        || cell.stored() instanceof Content.Numeric
        || cell.stored() instanceof Content.Fault
        || words(cell)
            .filter(text ->
                text.length() <= LONGEST_READING && HAS_DIGIT.matcher(text).matches())
            .isPresent();
  }
}
