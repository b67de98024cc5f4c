package squaresheet.xlsx;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.sheet.Ref;

/**
 * One formula that many cells share: kept once, and spelled out for a cell when asked. References without a dollar sign
 * move with the cell and wrap around at the sheet's edges, as spreadsheet programs have it.
 */
final class SharedFormula implements Function<Ref, String> {

  private static final int ROWS = 1 << 20;
  private static final int COLUMNS = 1 << 14;

  /** Text, quoted sheet names, names of columns in tables, and words stand still; what is left and looks like a place moves. */
  private static final Pattern TOKEN =
      Pattern.compile("\"(?:[^\"]|\"\")*+\"|'(?:[^']|'')*+'|\\[(?:[^\\[\\]]|\\[[^\\]]*+])*+]"
          + "|(?<column>\\$?[A-Za-z]{1,3}:\\$?[A-Za-z]{1,3})(?![\\p{L}\\p{N}_.(!$])"
          + "|(?<row>\\$?[1-9]\\d{0,6}:\\$?[1-9]\\d{0,6})(?![\\p{L}\\p{N}_.(!$])"
          + "|(?<cell>\\$?[A-Za-z]{1,3}\\$?[1-9]\\d{0,6})(?![\\p{L}\\p{N}_.(!])"
          + "|[\\p{L}\\p{N}_.\\\\$?]++!?");

  private static final Pattern PLACE = Pattern.compile("(\\$?)([A-Za-z]*)(\\$?)(\\d*)");

  private final List<String> still = new ArrayList<>();
  private final List<Moving> moving = new ArrayList<>();
  private final Ref home;

  private record Moving(boolean columnStands, int column, boolean rowStands, int row) {
    String at(int down, int right) {
      String letters = column < 0
          ? ""
          : (columnStands ? "$" : "")
              + Ref.letters(columnStands ? column : Math.floorMod(column + right, COLUMNS));
      return row < 0
          ? letters
          : letters
              + (rowStands ? "$" : "")
              + ((rowStands ? row : Math.floorMod(row + down, ROWS)) + 1);
    }
  }

  SharedFormula(String formula, Ref home) {
    this.home = home;
    int done = 0;
    Matcher token = TOKEN.matcher(formula);
    while (token.find()) {
      if (token.group("cell") != null && place(token.group()).isEmpty()) {
        continue;
      }
      if (token.group("cell") != null
          || token.group("column") != null
          || token.group("row") != null) {
        still.add(formula.substring(done, token.start()));
        addEnds(token.group());
        done = token.end();
      }
    }
    still.add(formula.substring(done));
  }

  private void addEnds(String reference) {
    String[] ends = reference.split(":");
    moving.addAll(place(ends[0]));
    if (ends.length == 2) {
      still.add(":");
      moving.addAll(place(ends[1]));
    }
  }

  /** The place, or nothing where it lies outside of every sheet and so is a name. */
  private static List<Moving> place(String text) {
    Matcher parts = PLACE.matcher(text);
    if (!parts.matches()) {
      return List.of();
    }
    boolean rowOnly = parts.group(2).isEmpty();
    boolean columnStands = !rowOnly && !parts.group(1).isEmpty();
    boolean rowStands = !(rowOnly ? parts.group(1) : parts.group(3)).isEmpty();
    int column = rowOnly ? -1 : CellPlace.column(parts.group(2));
    int row = parts.group(4).isEmpty() ? -1 : Integer.parseInt(parts.group(4)) - 1;
    return column >= COLUMNS || row >= ROWS
        ? List.of()
        : List.of(new Moving(columnStands, column, rowStands, row));
  }

  @Override
  public String apply(Ref cell) {
    int down = cell.row() - home.row();
    int right = cell.column() - home.column();
    StringBuilder text = new StringBuilder(still.get(0));
    for (int i = 0; i < moving.size(); i++) {
      text.append(moving.get(i).at(down, right)).append(still.get(i + 1));
    }
    return text.toString();
  }
}
