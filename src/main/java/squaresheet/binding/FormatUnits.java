package squaresheet.binding;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Units that stand in number formats: {@code 0.00" ft"}, {@code #,##0.0 "m²"}. */
final class FormatUnits {

  private static final Pattern LITERAL = Pattern.compile("\"([^\"]+)\"");

  private FormatUnits() {}

  /** The unit in the number format of the column's first filled cell. */
  static Optional<UnitWord> of(FoundTable table, FoundColumn column) {
    return table.rows(FoundTable.Row.DATA).stream()
        .map(row -> table.grid().cell(row, column.at()))
        .filter(cell -> !cell.isBlank())
        .findFirst()
        .flatMap(cell -> of(cell.format()));
  }

  static Optional<UnitWord> of(String format) {
    Matcher literal = LITERAL.matcher(format);
    while (literal.find()) {
      Optional<UnitWord> unit = UnitWords.find(literal.group(1));
      if (unit.isPresent()) {
        return unit;
      }
    }
    return Optional.empty();
  }
}
