package squaresheet.binding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import squaresheet.binding.FoundTable.Row;
import squaresheet.binding.Meaning.Role;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Ref;

/** Tells the rows under a heading apart: items, prepared rows, bands, totals and notes; and says where the table ends. */
final class Rows {

  private static final Set<String> TOTAL_WORDS =
      Set.of("total", "subtotal", "sum", "summe", "gesamt", "totaux", "suma");

  private static final Pattern SUM =
      Pattern.compile("(?is)\\s*\\+?(SUM|SUBTOTAL|AGGREGATE|SUMIFS?)\\(.*");

  /** A name that fits the label of a single value this well stands beside one. */
  private static final double SURELY_A_LABEL = 0.9;

  /** A table may have this many blank rows in a row; more, and it has ended. */
  private static final int BLANKS_INSIDE = 1;

  private final Grid grid;
  private final List<FoundColumn> columns;
  private final int first;
  private final int last;
  private final int stop;
  private final Map<Integer, List<int[]>> sums = new TreeMap<>();

  /**
   * Looks at the rows of a table.
   *
   * @param stop the first row that cannot belong to it, because another table starts
   */
  Rows(Grid grid, List<FoundColumn> columns, int first, int last, int stop) {
    this.grid = grid;
    this.columns = columns;
    this.first = first;
    this.last = last;
    this.stop = Math.min(stop, grid.rows());
  }

  /** What the rows from {@code from} on are, as far as the table goes. */
  Map<Integer, Row> sort(int from) {
    Map<Integer, Row> sorted = new TreeMap<>();
    int blanks = 0;
    boolean totalled = false;
    for (int row = from; row < stop && blanks <= BLANKS_INSIDE; row++) {
      if (grid.isBlank(row, first, last)) {
        if (isSummedBelow(row)) {
          sorted.put(row, Row.PREPARED);
        } else {
          blanks++;
        }
      } else {
        Row kind = kind(row);
        boolean parted = totalled || blanks > 0;
        if ((totalled && !goesOn(row, kind)) || (parted && isOfAnotherKind(row, kind, sorted))) {
          break;
        }
        blanks = 0;
        totalled = kind == Row.TOTAL || (totalled && kind == Row.NOTE);
        sorted.put(row, kind);
      }
    }
    return sorted;
  }

  /** Whether a sum further down its column takes the row in, so that it is kept free for an item. */
  private boolean isSummedBelow(int row) {
    return columns.stream().filter(Rows::isQuantity).anyMatch(column -> summed(column).stream()
        .anyMatch(run -> run[0] <= row && row <= run[1]));
  }

  /** The stretches of a column that sums under them in the same column add up. */
  private List<int[]> summed(FoundColumn column) {
    return sums.computeIfAbsent(column.at(), at -> {
      List<int[]> found = new java.util.ArrayList<>();
      for (int below = 0; below < stop; below++) {
        if (isSumOfThoseAbove(below, column)) {
          stretches(below, column).stream().filter(run -> run[1] < stop).forEach(found::add);
        }
      }
      return found;
    });
  }

  private List<int[]> stretches(int row, FoundColumn column) {
    Ref own = grid.address(row, column.at()).map(Address::ref).orElseThrow();
    boolean down = isDown(row, column, own);
    return Formula.parse(cell(row, column).formula()).value().stream()
        .flatMap(it -> it.references().stream())
        .map(Node.Reference::block)
        .filter(block -> isAlong(block, own, down))
        .map(block -> down
            ? new int[] {block.first().row(), block.last().row()}
            : new int[] {block.first().column(), block.last().column()})
        .filter(run -> run[1] < row)
        .toList();
  }

  /** Whether the table goes on after a sum: only with an item, or a band over one, or a further sum. */
  private boolean goesOn(int row, Row kind) {
    return switch (kind) {
      case DATA, TOTAL -> true;
      case BAND -> row + 1 < stop && kind(row + 1) == Row.DATA;
      case PREPARED, NOTE -> false;
    };
  }

  /**
   * Whether a row behind a blank row or a sum looks like an item but is none: fewer of the cells that the items fill, or
   * the label of a single value.
   */
  private boolean isOfAnotherKind(int row, Row kind, Map<Integer, Row> sorted) {
    List<Integer> items = sorted.entrySet().stream()
        .filter(entry -> entry.getValue() == Row.DATA)
        .map(Map.Entry::getKey)
        .toList();
    if (kind == Row.TOTAL) {
      return !isInColumnsOfSums(row, sorted);
    }
    if (kind != Row.DATA || items.isEmpty()) {
      return kind == Row.DATA && sorted.containsValue(Row.TOTAL) && isNamedLikeASingleValue(row);
    }
    List<FoundColumn> usual = columns.stream()
        .filter(column ->
            items.stream().filter(item -> !isBlank(item, column)).count() * 2 >= items.size())
        .toList();
    long filled = usual.stream().filter(column -> !isBlank(row, column)).count();
    return filled * 3 < usual.size() * 2L || isNamedLikeASingleValue(row);
  }

  /** Whether a further sum stands in a column in which one stood before. */
  private boolean isInColumnsOfSums(int row, Map<Integer, Row> sorted) {
    List<Integer> sums = sorted.entrySet().stream()
        .filter(entry -> entry.getValue() == Row.TOTAL)
        .map(Map.Entry::getKey)
        .toList();
    return sums.isEmpty()
        || columns.stream()
            .filter(column -> isQuantity(column) && !isBlank(row, column))
            .anyMatch(column -> sums.stream().anyMatch(sum -> !isBlank(sum, column)));
  }

  private boolean isNamedLikeASingleValue(int row) {
    return columns.stream()
        .filter(column -> column.meaning().role() == Role.KEY)
        .map(column -> Heading.of(grid.text(row, column.at())))
        .filter(heading -> !heading.isEmpty())
        .anyMatch(heading ->
            Words.fits(heading, "job").stream().anyMatch(fit -> fit.score() >= SURELY_A_LABEL));
  }

  private Row kind(int row) {
    if (isTotal(row)) {
      return Row.TOTAL;
    }
    boolean named = columns.stream()
        .anyMatch(column -> column.meaning().role() == Role.KEY && !isBlank(row, column));
    boolean typed = columns.stream().anyMatch(column -> isQuantity(column) && isTyped(row, column));
    boolean computed = columns.stream().anyMatch(column -> cell(row, column).isFormula());
    if (typed || (named && (computed || count(row) > 1))) {
      return named || typedCount(row) > 1 ? Row.DATA : Row.NOTE;
    }
    return computed ? Row.PREPARED : isFollowedByAnItem(row) ? Row.BAND : Row.NOTE;
  }

  private boolean isFollowedByAnItem(int row) {
    for (int next = row + 1; next < stop && next <= row + 2; next++) {
      if (!grid.isBlank(next, first, last)) {
        return typedCount(next) > 0;
      }
    }
    return false;
  }

  private boolean isTotal(int row) {
    boolean nothingTyped = columns.stream()
        .noneMatch(column ->
            isQuantity(column) && column.meaning().role() == Role.INPUT && isTyped(row, column));
    boolean sums = isSumRow(row);
    return saysTotal(row)
        ? nothingTyped || sums
        : sums && (isUnnamed(row) || (nothingTyped && hasOnlySums(row)));
  }

  private boolean saysTotal(int row) {
    for (int column = first; column <= last; column++) {
      List<String> words = Tokens.of(grid.text(row, column));
      if (words.stream().anyMatch(TOTAL_WORDS::contains) || words.equals(List.of("all"))) {
        return true;
      }
    }
    return false;
  }

  private boolean isUnnamed(int row) {
    return columns.stream()
        .filter(column -> column.meaning().role() == Role.KEY)
        .allMatch(column -> isBlank(row, column));
  }

  private boolean isSumRow(int row) {
    return columns.stream().anyMatch(column -> isSumOfThoseAbove(row, column));
  }

  private boolean hasOnlySums(int row) {
    return columns.stream()
        .filter(column -> cell(row, column).isFormula())
        .allMatch(column -> isSumOfThoseAbove(row, column));
  }

  /** Whether the formula is a sum that takes in a stretch of its own column (or row, where the table lies on its side). */
  private boolean isSumOfThoseAbove(int row, FoundColumn column) {
    String formula = cell(row, column).formula();
    if (!SUM.matcher(formula).matches()) {
      return false;
    }
    Optional<Ref> own = grid.address(row, column.at()).map(Address::ref);
    return own.isPresent()
        && Formula.parse(formula).value().stream()
            .flatMap(it -> it.references().stream())
            .map(Node.Reference::block)
            .anyMatch(block -> isAlong(block, own.get(), isDown(row, column, own.get())));
  }

  private boolean isDown(int row, FoundColumn column, Ref own) {
    return grid.address(row + 1, column.at()).map(Address::ref).equals(Optional.of(own.plus(1, 0)));
  }

  private static boolean isAlong(Block block, Ref own, boolean down) {
    return down
        ? block.columns() == 1 && block.first().column() == own.column()
        : block.rows() == 1 && block.first().row() == own.row();
  }

  private long count(int row) {
    return columns.stream().filter(column -> !isBlank(row, column)).count();
  }

  private long typedCount(int row) {
    return columns.stream()
        .filter(column -> isQuantity(column) && isTyped(row, column))
        .count();
  }

  private static boolean isQuantity(FoundColumn column) {
    return column.meaning().holds().isNumeric() && column.meaning().role() != Role.KEY;
  }

  private boolean isTyped(int row, FoundColumn column) {
    return !cell(row, column).isFormula() && Cells.isLikeANumber(cell(row, column));
  }

  private boolean isBlank(int row, FoundColumn column) {
    return grid.isBlank(row, column.at());
  }

  private Cell cell(int row, FoundColumn column) {
    return grid.cell(row, column.at());
  }
}
