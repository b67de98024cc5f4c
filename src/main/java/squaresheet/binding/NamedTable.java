package squaresheet.binding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;

/**
 * Builds a table of a job workbook from the defined names of its columns; a column whose name is lost is looked for by its
 * heading.
 */
final class NamedTable {

  private final NamedCells names;
  private final BookValues values;
  private final String file;
  private final String table;
  /** Property to the name of its column. */
  private final Map<String, String> columns;

  NamedTable(
      NamedCells names, BookValues values, String file, String table, Map<String, String> columns) {
    this.names = names;
    this.values = values;
    this.file = file;
    this.table = table;
    this.columns = columns;
  }

  /** The table, if any of its columns is still named. */
  Optional<FoundTable> find() {
    Optional<Sheet> sheet = names.sheet(List.copyOf(columns.values()));
    if (sheet.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Block> blocks = new LinkedHashMap<>();
    columns.forEach((property, name) -> names
        .cell(names.typed(name))
        .filter(cell -> cell.sheet().equalsIgnoreCase(sheet.get().name()))
        .flatMap(cell -> names.block(names.typed(name)))
        .ifPresent(block -> blocks.put(property, block)));
    int heading = blocks.values().stream()
        .mapToInt(block -> NamedCells.heading(block).row())
        .min()
        .orElse(0);
    Grid grid = new Worked(new SheetGrid(file, sheet.get()), values);
    List<FoundColumn> found = new ArrayList<>();
    columns.forEach((property, name) ->
        column(grid, heading, property, blocks.get(property)).ifPresent(found::add));
    found.sort(Comparator.comparingInt(FoundColumn::at));
    int last = found.stream().mapToInt(FoundColumn::at).max().orElse(0);
    int first = found.stream().mapToInt(FoundColumn::at).min().orElse(0);
    Map<Integer, FoundTable.Row> rows =
        new Rows(grid, found, first, last, Integer.MAX_VALUE).sort(heading + 1);
    return Optional.of(new FoundTable(table, grid, heading, found, first, last, rows, 1));
  }

  private Optional<FoundColumn> column(Grid grid, int heading, String property, Block block) {
    Meaning meaning = Words.find(table, property).orElseThrow();
    if (block != null) {
      Heading over = Heading.of(grid.text(heading, block.first().column()));
      return Optional.of(new FoundColumn(
          block.first().column(), over, meaning, over.unit(), 1, "by its defined name"));
    }
    return byHeading(grid, heading, meaning);
  }

  private static Optional<FoundColumn> byHeading(Grid grid, int heading, Meaning meaning) {
    for (int at = 0; at < grid.columns(); at++) {
      Heading over = Heading.of(grid.text(heading, at));
      if (!over.isEmpty() && Words.fit(over, meaning).score() >= 0.95) {
        return Optional.of(new FoundColumn(at, over, meaning, over.unit(), 0.95, "by its heading"));
      }
    }
    return Optional.empty();
  }

  /** A grid whose formulas are worked out anew. */
  private record Worked(SheetGrid sheet, BookValues values) implements Grid {

    @Override
    public String name() {
      return sheet.name();
    }

    @Override
    public Stream<Place> filled() {
      return sheet.filled();
    }

    @Override
    public int rows() {
      return sheet.rows();
    }

    @Override
    public int columns() {
      return sheet.columns();
    }

    @Override
    public Cell cell(int row, int column) {
      Cell cell = sheet.cell(row, column);
      return cell.isFormula() ? values.cell(new Address(name(), new Ref(row, column))) : cell;
    }

    @Override
    public String spreadText(int row, int column) {
      return sheet.spreadText(row, column);
    }

    @Override
    public Where where(int row, int column) {
      return sheet.where(row, column);
    }

    @Override
    public Optional<Address> address(int row, int column) {
      return sheet.address(row, column);
    }
  }
}
