package squaresheet.sheet;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A cell of a workbook. Text form: {@code Planes!B7}, or {@code 'Main roof'!B7} where the sheet's name needs quotes.
 *
 * @param sheet the sheet's name
 * @param ref the place on it
 */
public record Address(String sheet, Ref ref) {

  private static final Pattern PLAIN = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_.]*");
  /** Names that a spreadsheet program would read as a cell, A1 or R1C1 style. */
  private static final Pattern LIKE_A_CELL = Pattern.compile("[A-Z]{1,3}\\d+|R\\d*(C\\d*)?|C\\d*");

  /** An address from the sheet's name and the text of a place, such as {@code B7}. */
  public static Address of(String sheet, String ref) {
    return new Address(sheet, Ref.parse(ref));
  }

  /** The sheet's name as formulas spell it, quoted where it must be. */
  public static String quoted(String sheet) {
    boolean plain = PLAIN.matcher(sheet).matches()
        && !LIKE_A_CELL.matcher(sheet.toUpperCase(Locale.ROOT)).matches();
    return plain ? sheet : "'" + sheet.replace("'", "''") + "'";
  }

  @Override
  public String toString() {
    return quoted(sheet) + "!" + ref;
  }
}
