package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import squaresheet.binding.FieldCells.Line;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.takeoff.Rule;

/** Finds the labels of a field sheet outside its tables, takes each with the value beside it, and keeps those without one. */
final class FieldLabels {

  /** Words stand at most this many columns right of their label. */
  private static final int FARTHEST = 3;
  /** A number at most this many, across the merged cells of a form. */
  private static final int FARTHEST_NUMBER = 12;

  private final Grid grid;
  private final FieldCells cells;
  private final FieldWords words;
  private final List<FoundTable> tables;
  private final List<FieldLabel> found = new ArrayList<>();

  private FieldLabels(Grid grid, FieldCells cells, FieldWords words, List<FoundTable> tables) {
    this.tables = tables;
    this.grid = grid;
    this.cells = cells;
    this.words = words;
  }

  /** The labels with a value, in the order in which they are read; their cells, and those of bare labels, are taken. */
  static List<FieldLabel> take(
      Grid grid, FieldCells cells, FieldWords words, List<FoundTable> tables) {
    FieldLabels labels = new FieldLabels(grid, cells, words, tables);
    for (Line line : cells.lines(grid)) {
      line.columns().forEach(column -> labels.at(line.row(), column));
    }
    return labels.found;
  }

  private void at(int row, int column) {
    Heading heading = heading(row, column);
    Optional<String> property =
        isFree(row, column) && !heading.isEmpty() ? words.property(heading) : Optional.empty();
    property.ifPresentOrElse(it -> beside(it, heading, row, column), () -> within(row, column));
  }

  private void beside(String property, Heading heading, int row, int column) {
    cells.take(grid, row, column);
    beside(row, column).ifPresentOrElse(right -> take(property, heading, row, right), () -> {
      if (isBelow(row, column)) {
        take(property, heading, row + 1, column);
      }
    });
  }

  /** A label and its value in one cell: {@code Layers to tear off: 2}. */
  private void within(int row, int column) {
    String[] parts = grid.text(row, column).split("\\s*[:=]\\s*", 2);
    Heading heading = Heading.of(parts[0]);
    if (parts.length < 2 || parts[1].isBlank() || heading.isEmpty() || !isFree(row, column)) {
      return;
    }
    words.property(heading).ifPresent(property -> {
      cells.take(grid, row, column);
      Cell cell = Cell.of(new Content.Text(parts[1].strip()));
      Optional<UnitWord> unit = heading.unit().filter(it -> Tape.unit(it).isPresent());
      found.add(new FieldLabel(
          property, heading.text(), cell, unit, grid.where(row, column, heading.text())));
    });
  }

  /** Whether anything stands there that is neither taken nor in a table. */
  private boolean isFree(int row, int column) {
    return cells.isLeft(grid, row, column)
        && tables.stream().noneMatch(table -> table.covers(row, column));
  }

  private Heading heading(int row, int column) {
    return Heading.of(grid.text(row, column).replaceFirst("[:=]\\s*$", ""));
  }

  /** The column of the value on the right. */
  private Optional<Integer> beside(int row, int column) {
    return IntStream.rangeClosed(column + 1, column + FARTHEST_NUMBER)
        .filter(right -> !grid.isBlank(row, right))
        .boxed()
        .findFirst()
        .filter(right -> isFree(row, right))
        .filter(right -> right == column + 1 || !isLikeALabel(row, right))
        .filter(right -> right <= column + FARTHEST || Cells.isLikeANumber(grid.cell(row, right)));
  }

  /** Whether a text behind empty cells is rather the next label of a form: one of ours, or one with a value of its own. */
  private boolean isLikeALabel(int row, int column) {
    if (grid.text(row, column).isEmpty() || Cells.isLikeANumber(grid.cell(row, column))) {
      return false;
    }
    boolean hasValue = !grid.isBlank(row, column + 1)
        && UnitWords.find(grid.text(row, column + 1)).isEmpty();
    return hasValue || words.property(heading(row, column)).isPresent();
  }

  /** Whether a number stands under the label, and nothing but it. */
  private boolean isBelow(int row, int column) {
    return Cells.isLikeANumber(grid.cell(row + 1, column))
        && isFree(row + 1, column)
        && grid.isBlank(row + 1, column + 1)
        && !Cells.isLikeANumber(grid.cell(row + 2, column));
  }

  private void take(String property, Heading heading, int row, int column) {
    cells.take(grid, row, column);
    Optional<UnitWord> beside = UnitWords.find(grid.text(row, column + 1));
    Optional<UnitWord> unit =
        heading.unit().filter(it -> Tape.unit(it).isPresent()).or(() -> beside);
    boolean ownUnit =
        words.setting(property).filter(rule -> isUnit(rule, row, column + 1)).isPresent();
    if (ownUnit || (unit.equals(beside) && beside.flatMap(Tape::unit).isPresent())) {
      cells.take(grid, row, column + 1);
    }
    found.add(new FieldLabel(
        property,
        heading.text(),
        grid.cell(row, column),
        unit,
        grid.where(row, column, heading.text())));
  }

  /** Whether the cell says the unit of a setting as the job workbook does, such as {@code layer}. */
  private boolean isUnit(Rule rule, int row, int column) {
    String unit = Entries.unit(rule.unit());
    return !grid.text(row, column).isEmpty() && grid.text(row, column).equalsIgnoreCase(unit);
  }
}
