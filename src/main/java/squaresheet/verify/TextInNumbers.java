package squaresheet.verify;

import java.util.stream.IntStream;
import squaresheet.finding.Fix;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;

/** Whether a text stands where numbers belong. */
final class TextInNumbers {

  private static final int AROUND = 6;

  private TextInNumbers() {}

  /** Whether formulas read the cell, most of its neighbours above and below are numbers, and its heading says amounts. */
  static boolean isAmong(TypedCell cell) {
    return cell.book().links().isRead(cell.at())
        && !isLookedUp(cell)
        && !Words.isCode(cell.heading())
        && mostAreNumbers(cell);
  }

  /** The number that the text spells, in its place; nothing where it spells none. */
  static Fix put(TypedCell cell, String number) {
    return number.matches("[-+]?\\d+(\\.\\d+)?")
        ? Fix.number(cell.at(), Double.parseDouble(number))
        : Fix.NONE;
  }

  private static boolean mostAreNumbers(TypedCell cell) {
    int row = cell.ref().row();
    int column = cell.ref().column();
    long numbers = near(cell, row, column, true);
    long texts = near(cell, row, column, false);
    return numbers > texts;
  }

  private static long near(TypedCell cell, int row, int column, boolean numbers) {
    return IntStream.rangeClosed(Math.max(0, row - AROUND), row + AROUND)
        .filter(at -> at != row)
        .mapToObj(at -> cell.tab().cell(new Ref(at, column)).stored())
        .filter(content -> numbers
            ? content instanceof Content.Numeric
            : content instanceof Content.Text text && text.value().strip().matches("[-+]?[\\d.,]+"))
        .count();
  }

  /** Whether the cell is only compared with keys, never computed with. */
  private static boolean isLookedUp(TypedCell cell) {
    return cell.book().links().readers(cell.at()).stream().allMatch(reader -> Nodes.calls(
            cell.book().formula(reader).orElseThrow().tree(),
            "VLOOKUP",
            "HLOOKUP",
            "MATCH",
            "XLOOKUP",
            "XMATCH",
            "LOOKUP",
            "COUNTIF",
            "COUNTIFS",
            "LEFT",
            "MID",
            "RIGHT",
            "VALUE",
            "SUBSTITUTE",
            "FIND",
            "SEARCH")
        .findAny()
        .isPresent());
  }
}
