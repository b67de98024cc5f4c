package squaresheet.binding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** The lists to choose from that stand behind the cells of a table. */
final class Choices {

  /** A list longer than this is not gone through. */
  private static final int LONGEST = 1000;

  private final Workbook book;
  private final FoundTable table;

  Choices(Workbook book, FoundTable table) {
    this.book = book;
    this.table = table;
  }

  /** The words that a column's cells may be chosen from; none where they are free. */
  List<String> of(FoundColumn column) {
    Optional<Ref> first = table.grid().address(table.heading() + 1, column.at()).map(Address::ref);
    return book.sheet(table.grid().name()).stream()
        .flatMap(sheet -> sheet.validations().stream())
        .filter(it -> it.kind() == Sheet.Validation.Kind.LIST)
        .filter(it -> it.blocks().stream()
            .anyMatch(block -> first.stream().anyMatch(ref -> isOver(block, ref))))
        .findFirst()
        .map(it -> words(it.first()))
        .orElse(List.of());
  }

  /** Whether the block stands in the column, wherever it begins. */
  private boolean isOver(Block block, Ref ref) {
    return table.isOnItsSide()
        ? block.first().row() <= ref.row() && ref.row() <= block.last().row()
        : block.first().column() <= ref.column() && ref.column() <= block.last().column();
  }

  private List<String> words(String list) {
    if (list.startsWith("\"")) {
      return Arrays.stream(list.replaceAll("^\"|\"$", "").split(","))
          .map(String::strip)
          .toList();
    }
    Workbook.Name name = book.name(list).orElseGet(() -> Workbook.Name.of("list", list));
    List<String> words = new ArrayList<>();
    name.block().ifPresent(block -> {
      String sheet = name.cell()
          .map(Address::sheet)
          .filter(it -> !it.isEmpty())
          .orElse(table.grid().name());
      for (int i = 0; i < Math.min(LONGEST, block.rows() * block.columns()); i++) {
        Ref ref = block.first().plus(i / block.columns(), i % block.columns());
        words.add(Cells.text(book.cell(new Address(sheet, ref))));
      }
    });
    return words;
  }
}
