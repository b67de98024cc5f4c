package squaresheet.binding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import squaresheet.sheet.Cell;

/** Finds values by the label on their left or above them, outside the tables. */
final class LabelFinder {

  /** A value stands at most this many columns right of its label. */
  private static final int FARTHEST = 3;
  /** Or this many, in the column of the sums over it, say; that is asked. */
  private static final int FARTHEST_ASKED = 12;

  private static final double FAR = 0.7;
  /** A label longer than this is a sentence. */
  private static final int LONGEST = 60;
  /** Labels are looked for no further down and to the right than this. */
  private static final int DEEPEST = 2000;
  /** Totals stand under a list, however long; so many rows at the end are looked at. */
  private static final int LAST = 200;

  private static final int WIDEST = 64;
  /** A whole number up to this may be a percentage written without its sign; it is looked into when it is read. */
  private static final double LARGEST_PERCENT = 60;

  /** Only part of the label says so: what remains may change the meaning, so it is asked. */
  private static final double LEAST = 0.6;

  /** The whole label is one of the words. */
  private static final double EXACT = 0.95;

  private final Grid grid;
  private final List<FoundTable> tables;
  private final List<Meaning> meanings;
  /** Whether anything beside a label is its value, however it is written. */
  private final boolean anyWriting;
  /** The last row of each table. */
  private final List<Integer> ends;

  private LabelFinder(
      Grid grid, List<FoundTable> tables, List<Meaning> meanings, boolean anyWriting) {
    this.grid = grid;
    this.tables = tables;
    this.meanings = meanings;
    this.anyWriting = anyWriting;
    ends = tables.stream()
        .map(table -> table.rows().keySet().stream().reduce(table.heading(), Math::max))
        .toList();
  }

  /** The labels of the table's words on a grid, the surest for each meaning only. */
  static List<FoundLabel> find(Grid grid, List<FoundTable> tables, String words) {
    return surest(all(grid, tables, words));
  }

  /**
   * The labels of a form that people fill in by hand: whatever stands beside one is its value, be it a number or words; whether
   * it can be read is found out when it is read.
   */
  static List<FoundLabel> filledIn(Grid grid, List<FoundTable> tables) {
    return surest(allFilledIn(grid, tables));
  }

  /** Every label of such a form, row by row; several may mean the same. */
  static List<FoundLabel> allFilledIn(Grid grid, List<FoundTable> tables) {
    return new LabelFinder(grid, tables, Words.of("job"), true).all();
  }

  private static List<FoundLabel> surest(List<FoundLabel> labels) {
    Map<String, FoundLabel> best = new TreeMap<>();
    labels.forEach(label -> best.merge(
        label.meaning().property(),
        label,
        (one, other) -> other.sure() > one.sure() ? other : one));
    return best.values().stream()
        .sorted(Comparator.comparingInt(FoundLabel::row))
        .toList();
  }

  /** Every label of the table's words on a grid, row by row; several may mean the same. */
  static List<FoundLabel> all(Grid grid, List<FoundTable> tables, String words) {
    return new LabelFinder(grid, tables, Words.of(words), false).all();
  }

  /**
   * Exact labels of values that are still to be put in: the cell on the right is empty, and so is the one on the left, since a
   * label between others is rather a heading.
   */
  static List<FoundLabel> vacant(Grid grid, List<FoundTable> tables) {
    LabelFinder finder = new LabelFinder(grid, tables, Words.of("job"), false);
    List<FoundLabel> vacant = new ArrayList<>();
    for (int row = 0; row < grid.rows(); row = finder.next(row)) {
      for (int column = 0; column < Math.min(grid.columns(), WIDEST); column++) {
        if (finder.isVacant(row, column)) {
          finder.exact(row, column).ifPresent(vacant::add);
        }
      }
    }
    return vacant;
  }

  private boolean isVacant(int row, int column) {
    String text = grid.text(row, column);
    return !text.isEmpty()
        && text.length() <= LONGEST
        && !isInATable(row, column)
        && !isInATable(row, column + 1)
        && grid.isBlank(row, column + 1)
        && (column == 0 || grid.isBlank(row, column - 1))
        && Words.isFamiliarLabel(text)
        && at(row, column).isEmpty();
  }

  private Optional<FoundLabel> exact(int row, int column) {
    Heading heading = heading(row, column);
    return meanings.stream()
        .filter(meaning -> meaning.role() == Meaning.Role.VALUE)
        .filter(meaning -> Words.fit(heading, meaning).score() >= EXACT)
        .findFirst()
        .map(meaning -> label(meaning, heading, row, column + 1, EXACT, "empty beside"));
  }

  private Heading heading(int row, int column) {
    return Heading.of(grid.text(row, column).replaceFirst("[:=]\\s*$", ""));
  }

  private List<FoundLabel> all() {
    List<FoundLabel> all = new ArrayList<>();
    for (int row = 0; row < grid.rows(); row = next(row)) {
      for (int column = 0; column < Math.min(grid.columns(), WIDEST); column++) {
        all.addAll(at(row, column));
      }
    }
    return all;
  }

  /** The next row to look at: each at the top of the sheet, and each of the last under a long list. */
  private int next(int row) {
    return row + 1 == DEEPEST ? Math.max(DEEPEST, grid.rows() - LAST) : row + 1;
  }

  private List<FoundLabel> at(int row, int column) {
    String text = grid.text(row, column);
    if (text.isEmpty()
        || text.length() > LONGEST
        || !Words.isFamiliarLabel(text)
        || isInATable(row, column)) {
      return List.of();
    }
    Heading heading = heading(row, column);
    List<FoundLabel> labels = new ArrayList<>();
    for (Meaning meaning : meanings) {
      double score = Words.fit(heading, meaning).score();
      if (score >= LEAST) {
        value(row, column, meaning, heading, score).ifPresent(labels::add);
      }
    }
    return labels.stream()
        .max(Comparator.comparingDouble(FoundLabel::sure))
        .map(List::of)
        .orElse(List.of());
  }

  private boolean isInATable(int row, int column) {
    for (int at = 0; at < tables.size(); at++) {
      FoundTable table = tables.get(at);
      int across = table.isOnItsSide() ? row : column;
      int along = table.isOnItsSide() ? column : row;
      if (along >= table.heading()
          && along <= ends.get(at)
          && across >= table.first()
          && across <= table.last()) {
        return true;
      }
    }
    return false;
  }

  private Optional<FoundLabel> value(
      int row, int column, Meaning meaning, Heading heading, double score) {
    int right = beside(row, column);
    boolean fits = right > 0
        && fits(meaning, grid.cell(row, right))
        && (right == column + 1 || !isAnotherLabel(row, right));
    if (right > 0 && right <= column + FARTHEST) {
      return fits
          ? Optional.of(label(meaning, heading, row, right, score, "beside"))
          : Optional.empty();
    }
    boolean below = fits(meaning, grid.cell(row + 1, column)) && !isInATable(row + 1, column);
    boolean alone = !Cells.isLikeANumber(grid.cell(row + 2, column));
    if (below && alone && meaning.holds().isNumeric()) {
      return Optional.of(label(meaning, heading, row + 1, column, score * 0.9, "above"));
    }
    double far = score * FAR;
    return fits && meaning.holds().isNumeric() && !isInATable(row, right)
        ? Optional.of(label(meaning, heading, row, right, far, "in the row of"))
        : Optional.empty();
  }

  /** Whether a text behind empty cells is the next label of a form rather than a value. */
  private boolean isAnotherLabel(int row, int column) {
    return !grid.text(row, column).isEmpty()
        && !Cells.isLikeANumber(grid.cell(row, column))
        && exact(row, column).isPresent();
  }

  /** The first column right of a label in which anything stands; 0 where none does, not too far. */
  private int beside(int row, int column) {
    return IntStream.rangeClosed(column + 1, column + FARTHEST_ASKED)
        .filter(right -> !grid.isBlank(row, right))
        .findFirst()
        .orElse(0);
  }

  private FoundLabel label(
      Meaning meaning, Heading heading, int row, int column, double score, String side) {
    Optional<UnitWord> unit = heading
        .unit()
        .filter(word -> meaning.holds().takes(word.kind()))
        .filter(word -> meaning.holds() != Holds.NUMBER || word.kind() == Holds.NUMBER)
        .or(() -> UnitWords.find(grid.text(row, column + 1)));
    String why = "label '" + heading.text() + "' stands " + side + " it";
    return new FoundLabel(meaning, grid, heading, row, column, unit, score, why);
  }

  private boolean fits(Meaning meaning, Cell cell) {
    return !cell.isBlank()
        && ((anyWriting && meaning.role() == Meaning.Role.VALUE) || isOfItsKind(meaning, cell));
  }

  private static boolean isOfItsKind(Meaning meaning, Cell cell) {
    Predicate<Cell> number = Cells::isLikeANumber;
    return (!meaning.holds().isNumeric() || number.test(cell))
        && (meaning.holds() != Holds.RATIO || isLikeARatio(cell))
        && (meaning.holds() != Holds.MONEY || !isShownAsRatio(cell))
        && (meaning.holds() != Holds.PITCH || isLikeAPitch(cell));
  }

  /** A ratio is at most 1, or written in percent; what is larger is rather an amount. */
  private static boolean isLikeARatio(Cell cell) {
    return isShownAsRatio(cell)
        || Cells.number(cell).stream()
            .allMatch(it -> it <= 1 || (it <= LARGEST_PERCENT && it == Math.rint(it)));
  }

  private static boolean isShownAsRatio(Cell cell) {
    return cell.format().contains("%") || Cells.text(cell).endsWith("%");
  }

  private static boolean isLikeAPitch(Cell cell) {
    return Cells.number(cell).stream().allMatch(it -> it > 0 && it < 90)
        && Cells.words(cell).stream().allMatch(it -> it.matches("[\\d.,]+\\s*(\\D.{0,8})?"));
  }
}
