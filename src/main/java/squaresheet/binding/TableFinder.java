package squaresheet.binding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import squaresheet.binding.FoundTable.Row;
import squaresheet.binding.Meaning.Role;

/** Finds tables by their headings, wherever they stand on a sheet, upright or on their side. */
final class TableFinder {

  /** Headings may stand in this many rows over each other. */
  private static final int HEADING_ROWS = 3;
  /** Titles are looked for this many rows over the headings. */
  private static final int TITLE_ROWS = 4;

  private static final double TITLE_HELPS = 0.5;
  /** A list of labels with one value each looks much like a table on its side; that takes more to believe. */
  private static final double LYING_DOWN = 0.8;

  /** Further down than this no new table is looked for: no person scrolls there for a heading. */
  private static final int DEEPEST = 5000;

  private final Grid grid;

  /** Nor further to the right. */
  private static final int WIDEST = 256;

  private TableFinder(Grid grid) {
    this.grid = grid;
  }

  /** The tables of a grid, the upright ones first, then by where they stand. */
  static List<FoundTable> find(Grid grid) {
    List<FoundTable> upright = new TableFinder(grid).find();
    List<FoundTable> all = new ArrayList<>(upright);
    new TableFinder(grid.turned())
        .find().stream()
            .filter(table -> table.sure() > LYING_DOWN && hasItems(table))
            .filter(table -> upright.stream().noneMatch(other -> overlapTurned(table, other)))
            .forEach(all::add);
    return all;
  }

  /** Whether its items have names, or are several: one value behind each label is a list of single values. */
  private static boolean hasItems(FoundTable table) {
    boolean named = table.columns().stream()
        .anyMatch(column -> column.meaning().role() == Role.KEY && column.isSure());
    int prepared = named ? table.rows(Row.PREPARED).size() : 0;
    return table.rows(Row.DATA).size() + prepared > (named ? 0 : 1);
  }

  private static boolean overlapTurned(FoundTable turned, FoundTable upright) {
    int lastRow = upright.rows().keySet().stream().reduce(upright.heading(), Math::max);
    return turned.first() <= lastRow
        && turned.last() >= upright.heading()
        && turned.heading() <= upright.last();
  }

  private record Candidate(int row, int first, int last, HeadingRow.Reading reading) {
    double quality() {
      return reading.quality();
    }
  }

  private List<FoundTable> find() {
    List<Candidate> all = new ArrayList<>();
    for (int row = 0; row < Math.min(grid.rows(), DEEPEST); row++) {
      for (int[] run : runs(row)) {
        best(row, run[0], run[1]).ifPresent(all::add);
      }
    }
    List<Candidate> accepted = withoutItems(withoutRivals(all));
    return accepted.stream().flatMap(it -> table(it, accepted).stream()).toList();
  }

  /** Of headings within three rows of each other, in the same columns, only the best are headings. */
  private static List<Candidate> withoutRivals(List<Candidate> all) {
    return all.stream()
        .filter(one -> all.stream()
            .noneMatch(other -> !other.equals(one)
                && overlaps(one, other)
                && Math.abs(other.row - one.row) < HEADING_ROWS
                && (other.quality() > one.quality()
                    || (other.quality() == one.quality() && other.row < one.row))))
        .sorted(Comparator.comparingInt(Candidate::row))
        .toList();
  }

  /** An item may read like headings too: a plane beside a rake, a ridge and a rake. It stays an item of its table. */
  private List<Candidate> withoutItems(List<Candidate> fromTheTop) {
    List<Candidate> headings = new ArrayList<>();
    for (Candidate one : fromTheTop) {
      if (headings.stream().noneMatch(table -> isItem(one, table))) {
        headings.add(one);
      }
    }
    return headings;
  }

  /** Whether a row holds readings where better headings over it ask for them. */
  private boolean isItem(Candidate one, Candidate table) {
    return overlaps(one, table)
        && table.quality() > one.quality()
        && (saysShape(one, table)
            || table.reading.columns().stream()
                    .filter(column -> column.meaning().holds().isNumeric())
                    .filter(column -> Cells.isLikeANumber(grid.cell(one.row, column.at())))
                    .count()
                > 1);
  }

  /** A plane by its corners has few readings, but no heading says under Shape what a shape is. */
  private boolean saysShape(Candidate one, Candidate table) {
    return table.reading.columns().stream()
        .filter(column -> column.property().equals("shape"))
        .map(column -> grid.text(one.row, column.at()).toLowerCase(Locale.ROOT))
        .anyMatch(FieldForm.SHAPES::contains);
  }

  private static boolean overlaps(Candidate one, Candidate other) {
    return one.first <= other.last && other.first <= one.last;
  }

  /** The runs of columns that hold headings: parted where a column is blank in the heading and in the rows under it. */
  private List<int[]> runs(int row) {
    List<int[]> runs = new ArrayList<>();
    int start = -1;
    int end = Math.min(grid.columns(), WIDEST);
    for (int column = 0; column <= end; column++) {
      boolean gap = column == end || isGap(row, column);
      if (!gap && start < 0) {
        start = column;
      } else if (gap && start >= 0) {
        runs.add(new int[] {start, column - 1});
        start = -1;
      }
    }
    return runs.stream().filter(run -> mayBeHeadings(row, run)).toList();
  }

  private boolean isGap(int row, int column) {
    for (int below = row; below <= row + 3; below++) {
      if (!grid.isBlank(below, column)) {
        return false;
      }
    }
    return grid.spreadText(row, column).isEmpty();
  }

  /** Whether the run may be headings: two familiar texts, and no more numbers than texts. */
  private boolean mayBeHeadings(int row, int[] run) {
    int familiar = 0;
    int texts = 0;
    int numbers = 0;
    for (int column = run[0]; column <= run[1]; column++) {
      boolean formula = grid.cell(row, column).isFormula();
      String text = formula ? "" : grid.text(row, column);
      texts += text.isEmpty() ? 0 : 1;
      numbers += formula || Cells.number(grid.cell(row, column)).isPresent() ? 1 : 0;
      familiar += !text.isEmpty() && Words.isFamiliar(text) ? 1 : 0;
    }
    return familiar > 1 && numbers <= texts;
  }

  private Optional<Candidate> best(int row, int first, int last) {
    List<Candidate> readings = new ArrayList<>();
    int most = hasReadings(row, first, last) ? 1 : HEADING_ROWS;
    for (int above = 0; above < most && above <= row; above++) {
      double price = above * 0.1;
      HeadingRow headings = new HeadingRow(grid, row, above, first, last);
      for (String table : Words.tables()) {
        double title = isTitled(table, row) ? TITLE_HELPS : 0;
        headings
            .as(table)
            .map(it -> new HeadingRow.Reading(table, it.columns(), it.quality() + title - price))
            .ifPresent(it -> readings.add(new Candidate(row, first, last, it)));
      }
    }
    return readings.stream().max(Comparator.comparingDouble(Candidate::quality));
  }

  /** Whether numbers are typed in a row, as in an item; what stands over that are headings, and it is none. */
  private boolean hasReadings(int row, int first, int last) {
    return IntStream.rangeClosed(first, last)
            .mapToObj(column -> grid.cell(row, column))
            .filter(cell -> !cell.isFormula() && Cells.number(cell).isPresent())
            .count()
        > 1;
  }

  private boolean isTitled(String table, int row) {
    return saysTitle(table, grid.name())
        || IntStream.range(Math.max(0, row - TITLE_ROWS), row)
            .anyMatch(up -> IntStream.range(0, Math.min(3, grid.columns()))
                .anyMatch(column -> saysTitle(table, grid.text(up, column))));
  }

  private static boolean saysTitle(String table, String text) {
    Heading heading = Heading.of(text);
    return !heading.isEmpty()
        && Words.of(table).stream()
            .filter(meaning -> meaning.role() == Role.TITLE)
            .anyMatch(meaning -> Words.fit(heading, meaning).score() >= 0.7);
  }

  private Optional<FoundTable> table(Candidate it, List<Candidate> accepted) {
    int stop = accepted.stream()
        .filter(other -> other.row > it.row && overlaps(it, other))
        .mapToInt(Candidate::row)
        .min()
        .orElse(Integer.MAX_VALUE);
    List<FoundColumn> named = withKey(it);
    Map<Integer, Row> rows = new Rows(grid, named, it.first, it.last, stop).sort(it.row + 1);
    double sure = Math.min(1, it.quality() / named.size());
    FoundTable table =
        new FoundTable(it.reading.table(), grid, it.row, named, it.first, it.last, rows, sure);
    boolean plausible = !table.rows(Row.DATA).isEmpty() || sure > 0.85;
    return plausible ? Optional.of(Agreement.weigh(table)) : Optional.empty();
  }

  /** A table whose rows are named in a first column without a heading of its own still has names. */
  private List<FoundColumn> withKey(Candidate it) {
    List<FoundColumn> columns = it.reading.columns();
    boolean named = columns.stream().anyMatch(column -> column.meaning().role() == Role.KEY);
    boolean free = columns.stream().noneMatch(column -> column.at() == it.first);
    if (named || !free) {
      return columns;
    }
    Meaning key = Words.of(it.reading.table()).stream()
        .filter(meaning -> meaning.role() == Role.KEY)
        .findFirst()
        .orElseThrow();
    List<FoundColumn> all = new ArrayList<>(columns);
    Heading heading = Heading.of(grid.text(it.row, it.first));
    all.add(
        0,
        new FoundColumn(
            it.first, heading, key, Optional.empty(), 0.76, "first column, names the rows"));
    return all;
  }
}
