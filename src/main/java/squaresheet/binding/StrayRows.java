package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import squaresheet.finding.Finding;

/**
 * The rows of a tape sheet that stand under its first headings, but in no table and behind no label: nothing is read of them,
 * so they are told.
 */
final class StrayRows {

  /** Headings may stand in two rows. */
  private static final int OVER = 1;
  /** So far under the last table, and so far to the right, nobody writes a reading. */
  private static final int FARTHEST = 500;

  private static final int WIDEST = 256;

  private static final String WHY =
      "a row must stand under the headings of a table, without two blank rows between, but stands outside"
          + " every table; nothing of it is read";

  private final Grid grid;
  private final List<Span> tables;
  private final Set<Integer> labelled;

  StrayRows(Grid grid, List<FoundTable> tables, List<FoundLabel> labels) {
    this.grid = grid;
    this.tables = tables.stream().map(Span::of).toList();
    labelled = labels.stream().map(FoundLabel::row).collect(Collectors.toSet());
  }

  /** The rows and columns that a table takes. */
  private record Span(int top, int bottom, int left, int right) {
    static Span of(FoundTable table) {
      int bottom = table.rows().keySet().stream().reduce(table.heading(), Math::max);
      return new Span(table.heading(), bottom, table.first(), table.last());
    }

    boolean contains(int row, int column) {
      return row >= top - OVER && row <= bottom && column >= left && column <= right;
    }
  }

  /** The rows that hold readings: two filled cells or more, a number in one of them. */
  List<FieldNotes.Unread> readings() {
    return outside()
        .filter(this::isLikeAReading)
        .mapToObj(row -> new FieldNotes.Unread(
            grid.where(row, left(row)), "rows outside the tables", written(row), "nothing", WHY))
        .toList();
  }

  /** What is said of the rows: an error for each with readings, a note for words under the last table. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    outside().forEach(row -> {
      String words = String.join(" | ", written(row));
      if (isLikeAReading(row)) {
        findings.add(Complaint.ROW_UNREAD.at(
            grid.where(row, left(row)), words, "", WHY + ": '" + words + "'"));
      } else if (row > lastRow()) {
        findings.add(Complaint.WORDS_LEFT.at(
            grid.where(row, left(row)),
            "words under the last table are for people; they do not go into the job: '" + words
                + "'"));
      }
    });
    return findings;
  }

  private IntStream outside() {
    int first = tables.stream().mapToInt(Span::top).min().orElse(0);
    int end = Math.min(grid.rows(), lastRow() + FARTHEST);
    return IntStream.range(first + 1, Math.max(first + 1, end))
        .filter(row -> !labelled.contains(row))
        .filter(row -> !cells(row).isEmpty());
  }

  private int lastRow() {
    return tables.stream().mapToInt(Span::bottom).max().orElse(0);
  }

  private boolean isLikeAReading(int row) {
    return cells(row).size() > 1
        && cells(row).stream().anyMatch(column -> Cells.isLikeANumber(grid.cell(row, column)));
  }

  /** The filled cells of a row that no table takes in. */
  private List<Integer> cells(int row) {
    return IntStream.range(0, Math.min(grid.columns(), WIDEST))
        .filter(column -> !grid.isBlank(row, column) && !isInATable(row, column))
        .boxed()
        .toList();
  }

  private boolean isInATable(int row, int column) {
    return tables.stream().anyMatch(table -> table.contains(row, column));
  }

  private int left(int row) {
    return cells(row).get(0);
  }

  private List<String> written(int row) {
    return cells(row).stream().map(column -> Cells.text(grid.cell(row, column))).toList();
  }
}
