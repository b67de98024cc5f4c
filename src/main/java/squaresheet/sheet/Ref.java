package squaresheet.sheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The place of a cell on its sheet. Text form: {@code B7}. Order: by row, then by column.
 *
 * @param row 0 to 1,048,575; row 0 is written 1
 * @param column 0 to 16,383; column 0 is written A
 */
public record Ref(int row, int column) implements Comparable<Ref> {

  private static final int ROWS = 1 << 20;
  private static final int COLUMNS = 1 << 14;
  private static final Pattern TEXT = Pattern.compile("([A-Z]{1,3})([1-9]\\d{0,6})");

  public Ref {
    if (row < 0 || row >= ROWS || column < 0 || column >= COLUMNS) {
      throw new IllegalArgumentException(
          "a cell must lie in rows 1 to 1048576 and columns A to XFD, but is row " + (row + 1L)
              + ", column " + (column + 1L));
    }
  }

  /**
   * Reads the text form, strictly.
   *
   * @throws IllegalArgumentException with a sentence, if the text is not one
   */
  public static Ref parse(String text) {
    Matcher parts = TEXT.matcher(text);
    if (!parts.matches()) {
      throw new IllegalArgumentException(
          "a cell address must read like B7, but reads '" + text + "'");
    }
    return new Ref(Integer.parseInt(parts.group(2)) - 1, column(parts.group(1)));
  }

  private static int column(String letters) {
    return letters.chars().reduce(0, (sum, letter) -> sum * 26 + letter - 'A' + 1) - 1;
  }

  /** The letters of a column, A for 0. */
  public static String letters(int column) {
    String last = String.valueOf((char) ('A' + column % 26));
    return column < 26 ? last : letters(column / 26 - 1) + last;
  }

  /** The place {@code rows} down and {@code columns} to the right. */
  public Ref plus(int rows, int columns) {
    return new Ref(row + rows, column + columns);
  }

  @Override
  public int compareTo(Ref other) {
    return row != other.row
        ? Integer.compare(row, other.row)
        : Integer.compare(column, other.column);
  }

  @Override
  public String toString() {
    return letters(column) + (row + 1);
  }
}
