package squaresheet.xlsx;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** Reads places and blocks as files spell them, kindly: dollar signs, small letters, whole rows and columns, ends swapped. */
final class CellPlace {

  static final int ROWS = 1 << 20;
  static final int COLUMNS = 1 << 14;

  private static final String BEYOND =
      "has cells beyond XFD1048576 and must be saved once in a spreadsheet program before it is changed";

  private CellPlace() {}

  /** Row and column packed into one number, or -1 where the text is not a cell of a sheet. */
  static long packed(String text) {
    int at = 0;
    int column = 0;
    for (; at < text.length(); at++) {
      int letter = text.charAt(at) & ~0x20;
      if (letter < 'A' || letter > 'Z' || column > COLUMNS) {
        break;
      }
      column = column * 26 + letter - 'A' + 1;
    }
    int row = 0;
    int digits = at;
    for (; at < text.length(); at++) {
      int digit = text.charAt(at) - '0';
      if (digit < 0 || digit > 9 || row > ROWS) {
        return -1;
      }
      row = row * 10 + digit;
    }
    boolean fits = digits > 0 && column >= 1 && column <= COLUMNS && row >= 1 && row <= ROWS;
    return fits ? (long) (row - 1) << 14 | (column - 1) : -1;
  }

  /** The number of the column with these letters, at most three, capital or small; A is 0. */
  static int column(String letters) {
    return letters.chars().reduce(0, (sum, letter) -> sum * 26 + (letter & ~0x20) - 'A' + 1) - 1;
  }

  /** The column of a cell given by its place, or the one after the cell before it; for parts that are to be changed. */
  static int columnAfter(int before, String place) {
    int column = place.isEmpty() ? before + 1 : ref(place).map(Ref::column).orElse(COLUMNS);
    if (column >= COLUMNS) {
      throw new Refusal(BEYOND);
    }
    return column;
  }

  /** The row of that number, where 1 is the first; for parts that are to be changed. */
  static int row(int stated) {
    if (stated > ROWS) {
      throw new Refusal(BEYOND);
    }
    return stated - 1;
  }

  static Optional<Ref> ref(String text) {
    long packed = packed(text.replace("$", "").strip());
    return packed < 0
        ? Optional.empty()
        : Optional.of(new Ref((int) (packed >>> 14), (int) (packed & COLUMNS - 1)));
  }

  /** The block, whichever corners it is given by; nothing where the text is none. */
  static Optional<Block> block(String text) {
    String bare = text.replace("$", "").strip();
    int colon = bare.indexOf(':');
    String first = colon < 0 ? bare : bare.substring(0, colon);
    String last = colon < 0 ? bare : bare.substring(colon + 1);
    Optional<Ref> one = ref(
        first.matches("[A-Za-z]{1,3}") ? first + "1" : first.matches("\\d+") ? "A" + first : first);
    Optional<Ref> other = ref(
        last.matches("[A-Za-z]{1,3}") ? last + ROWS : last.matches("\\d+") ? "XFD" + last : last);
    return one.flatMap(a -> other.map(b -> new Block(
        new Ref(Math.min(a.row(), b.row()), Math.min(a.column(), b.column())),
        new Ref(Math.max(a.row(), b.row()), Math.max(a.column(), b.column())))));
  }

  /** The blocks in a list with spaces between; what is none is left out. */
  static List<Block> blocks(String text) {
    List<Block> blocks = new ArrayList<>();
    for (String each : text.strip().split("\\s+")) {
      block(each).ifPresent(blocks::add);
    }
    return blocks;
  }
}
