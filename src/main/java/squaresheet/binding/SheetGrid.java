package squaresheet.binding;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;

/** A sheet of a workbook. Merged cells show their text in every column, but only in their first row. */
final class SheetGrid implements Grid {

  private final String file;
  private final Sheet sheet;
  private final Function<Ref, Cell> cells;
  private final Map<Ref, Ref> spread = new HashMap<>();

  SheetGrid(String file, Sheet sheet) {
    this(file, sheet, sheet::cell);
  }

  /** The sheet with its cells as someone else knows them, such as with formulas worked out anew. */
  SheetGrid(String file, Sheet sheet, Function<Ref, Cell> cells) {
    this.file = file;
    this.sheet = sheet;
    this.cells = cells;
    sheet.merged().stream().filter(block -> block.columns() <= WIDEST).forEach(this::spread);
  }

  /** A merged title wider than this is a title, not a heading over columns. */
  private static final int WIDEST = 64;

  private void spread(Block block) {
    for (int column = 1; column < block.columns(); column++) {
      spread.put(block.first().plus(0, column), block.first());
    }
  }

  @Override
  public String name() {
    return sheet.name();
  }

  @Override
  public Stream<Place> filled() {
    return sheet
        .cells()
        .map(placed -> new Place(placed.ref().row(), placed.ref().column()))
        .filter(place -> !isBlank(place.row(), place.column()));
  }

  @Override
  public int rows() {
    return sheet.used().map(block -> block.last().row() + 1).orElse(0);
  }

  @Override
  public int columns() {
    return sheet.used().map(block -> block.last().column() + 1).orElse(0);
  }

  @Override
  public Cell cell(int row, int column) {
    return cells.apply(new Ref(row, column));
  }

  @Override
  public String spreadText(int row, int column) {
    Ref from = spread.get(new Ref(row, column));
    return from == null ? text(row, column) : text(from.row(), from.column());
  }

  @Override
  public Where where(int row, int column) {
    return new Where.InCell(file, new Address(sheet.name(), new Ref(row, column)));
  }

  @Override
  public Optional<Address> address(int row, int column) {
    return Optional.of(new Address(sheet.name(), new Ref(row, column)));
  }
}
