package squaresheet.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Workbook;
import squaresheet.verify.Corrections;

/** The cells in which a person wants what is proposed. */
final class TakenCells implements Predicate<Address> {

  private final Map<String, Workbook.Name> cells = new LinkedHashMap<>();

  private TakenCells() {}

  /** Reads cells such as {@code Bid!E7} and {@code 'Main roof'!B2:B9}. */
  static TakenCells parse(List<String> texts, Workbook book) {
    TakenCells taken = new TakenCells();
    for (String text : texts) {
      Workbook.Name cells = Workbook.Name.of("taken", text);
      if (cells.cell().isEmpty() || book.sheet(cells.cell().get().sheet()).isEmpty()) {
        throw new CannotBeDone(
            Exit.WRONG_USE,
            "--take must name a cell of the workbook with its sheet, such as "
                + new Address(book.sheets().get(0).name(), Block.parse("E7").first()) + ", but is '"
                + text + "'");
      }
      taken.cells.put(text, cells);
    }
    return taken;
  }

  @Override
  public boolean test(Address cell) {
    return cells.values().stream().anyMatch(it -> isOf(it, cell));
  }

  private static boolean isOf(Workbook.Name cells, Address cell) {
    return cells.cell().orElseThrow().sheet().equalsIgnoreCase(cell.sheet())
        && cells.block().filter(block -> block.contains(cell.ref())).isPresent();
  }

  /** Ends the command where something is taken that nobody proposes. */
  void requireProposed(Corrections corrections) {
    List<Address> proposed = Stream.concat(
            corrections.changes().stream(),
            corrections.left().stream().map(Corrections.Left::change))
        .map(Corrections.Change::cell)
        .toList();
    cells.forEach((text, cells) -> {
      if (proposed.stream().noneMatch(cell -> isOf(cells, cell))) {
        throw new CannotBeDone(
            Exit.WRONG_USE,
            "there is nothing to take at " + text + ": no change is proposed there"
                + (proposed.isEmpty() ? "" : ", only at " + named(proposed)));
      }
    });
  }

  private static String named(List<Address> cells) {
    List<String> names = cells.stream().map(Address::toString).distinct().toList();
    return String.join(", ", names.subList(0, Math.min(8, names.size())))
        + (names.size() > 8 ? " and " + (names.size() - 8) + " more" : "");
  }
}
