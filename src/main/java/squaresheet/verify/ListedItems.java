package squaresheet.verify;

import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/** The company's prices and rates in a workbook: which cell of a row a complaint about an item speaks of. */
final class ListedItems {

  private static final String CATEGORY = "category ";

  private final Book book;

  ListedItems(Book book) {
    this.book = book;
  }

  /** The finding at the cell that must be put right, where that is another than it was said at. */
  Finding placed(Finding finding) {
    return at(finding).map(cell -> finding.at(book.where(cell))).orElse(finding);
  }

  private Optional<Address> at(Finding finding) {
    if (finding.info().id().equals("price-unit-off")) {
      return Folding.cell(finding).flatMap(price -> inRow(price, "price_per"));
    }
    if (!(finding.where() instanceof Where.OfItem item)) {
      return Optional.empty();
    }
    return item.subject().startsWith(CATEGORY)
        ? category(item.subject().substring(CATEGORY.length()))
        : Optional.empty();
  }

  /** The first cell of a list that holds the category. */
  private Optional<Address> category(String word) {
    return Stream.of("price_category", "rate_category", "tax_category")
        .flatMap(column -> book.named(column).stream())
        .flatMap(Cells::each)
        .filter(cell -> EstimateCells.text(book.value(cell)).equalsIgnoreCase(word))
        .findFirst();
  }

  private Optional<Address> inRow(Address row, String column) {
    return book.named(column)
        .map(cells -> new Address(
            cells.sheet(), new Ref(row.ref().row(), cells.block().first().column())));
  }
}
