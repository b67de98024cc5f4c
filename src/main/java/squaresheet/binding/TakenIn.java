package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** What takes in the rows of a table as a whole: sums, defined names, structured tables. */
final class TakenIn {

  private final FoundTable table;
  private final String sheet;
  private final List<Taker> takers = new ArrayList<>();

  /** Something that takes in stretches of rows. */
  private record Taker(String name, List<int[]> stretches, List<Block> blocks) {
    boolean has(int row) {
      return stretches.stream().anyMatch(it -> it[0] <= row && row <= it[1]);
    }
  }

  TakenIn(Workbook book, FoundTable table) {
    this.table = table;
    sheet = table.grid().name();
    AnyLayout.withoutNotes(book).sheets().forEach(this::formulas);
    book.names().forEach(this::name);
    book.sheet(sheet).stream().flatMap(it -> it.tables().stream()).forEach(this::structured);
  }

  /** What would leave the row out although it takes in the one before; nothing where nothing would. */
  Optional<String> leavingOut(int row, Optional<Integer> before) {
    return takers.stream()
        .filter(taker -> !taker.has(row))
        .filter(taker -> before.map(taker::has).orElseGet(() -> takesAny(taker)))
        .map(Taker::name)
        .findFirst();
  }

  /** The formula that adds up or else takes in this one column, the row included. */
  Optional<String> adding(int row, int column) {
    return takers.stream()
        .filter(taker -> taker.blocks().stream().anyMatch(it -> isOf(it, row, column)))
        .map(Taker::name)
        .findFirst();
  }

  private boolean isOf(Block block, int row, int column) {
    boolean alone = across(block.first()) == column && across(block.last()) == column;
    int[] rows = stretch(block);
    return alone && rows[1] > rows[0] && rows[0] <= row && row <= rows[1];
  }

  private boolean takesAny(Taker taker) {
    return table.rows().keySet().stream().anyMatch(taker::has) || taker.has(table.heading() + 1);
  }

  private void formulas(Sheet one) {
    one.cells().filter(placed -> placed.cell().isFormula()).forEach(placed -> {
      boolean here = one.name().equalsIgnoreCase(sheet);
      if (!here || !isItem(along(placed.ref()))) {
        formula(new Address(one.name(), placed.ref()), placed.cell().formula(), here);
      }
    });
  }

  private boolean isItem(int row) {
    FoundTable.Row kind = table.rows().get(row);
    return kind == FoundTable.Row.DATA || kind == FoundTable.Row.PREPARED;
  }

  private void formula(Address at, String text, boolean here) {
    boolean speaksOfIt = here
        || text.toLowerCase(java.util.Locale.ROOT)
            .contains(sheet.toLowerCase(java.util.Locale.ROOT));
    Optional<Formula> read = speaksOfIt ? Formula.parse(text).value() : Optional.empty();
    List<Node.Reference> references = read.stream()
        .flatMap(it -> it.references().stream())
        .filter(it -> it.sheet().isEmpty() ? here : it.sheet().equalsIgnoreCase(sheet))
        .filter(it -> isAcross(it.block()))
        .toList();
    List<int[]> stretches =
        references.stream().map(it -> stretch(it.block())).filter(this::isIn).toList();
    boolean ranges = references.stream().anyMatch(it -> !it.isCell() && isIn(stretch(it.block())));
    if (ranges || stretches.stream().mapToInt(it -> it[0]).distinct().count() > 1) {
      takers.add(new Taker(
          at.toString(),
          stretches,
          references.stream().map(Node.Reference::block).toList()));
    }
  }

  private boolean isIn(int[] stretch) {
    int last =
        table.rows().keySet().stream().filter(this::isItem).reduce(table.heading() + 1, Math::max);
    return stretch[1] > table.heading() && stretch[0] <= last;
  }

  private void name(Workbook.Name name) {
    Optional<Block> block = name.cell()
        .filter(at -> at.sheet().equalsIgnoreCase(sheet))
        .flatMap(at -> name.block())
        .filter(this::isAcross);
    block
        .map(this::stretch)
        .filter(this::isIn)
        .filter(it -> it[1] > it[0])
        .ifPresent(it -> takers.add(
            new Taker("the defined name " + name.name(), List.<int[]>of(it), List.of())));
  }

  private void structured(Sheet.Table structured) {
    Block block = structured.block();
    if (isAcross(block) && !table.isOnItsSide()) {
      int[] rows = {
        block.first().row() + structured.headingRows(), block.last().row() - structured.totalsRows()
      };
      if (isIn(rows)) {
        takers.add(new Taker("the table " + structured.name(), List.<int[]>of(rows), List.of()));
      }
    }
  }

  private boolean isAcross(Block block) {
    int first = across(block.first());
    int last = across(block.last());
    return first <= table.lastHeaded() && table.firstHeaded() <= last;
  }

  private int[] stretch(Block block) {
    return new int[] {along(block.first()), along(block.last())};
  }

  private int along(Ref ref) {
    return table.isOnItsSide() ? ref.column() : ref.row();
  }

  private int across(Ref ref) {
    return table.isOnItsSide() ? ref.row() : ref.column();
  }
}
