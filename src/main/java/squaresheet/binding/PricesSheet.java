package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import squaresheet.estimate.Category;
import squaresheet.estimate.PriceList.Price;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;

/** What products cost. */
final class PricesSheet {

  static final String NAME = "Prices";

  private static final int HEADING = 3;

  private final List<Map.Entry<String, Price>> prices;
  private final DraftSheet sheet;
  private final TableDraft table;

  PricesSheet(Pricing pricing, DraftSheet sheet) {
    this.sheet = sheet;
    prices = new ArrayList<>(pricing.prices().prices().entrySet());
    table = new TableDraft(sheet, HEADING, Math.max(1, prices.size()));
    String money = pricing.terms().currency();
    text("price_product", "Product", 20, Map.Entry::getKey);
    table.add(Column.of(
        "price_description",
        "Description",
        38,
        item -> Entries.computed(
            "IFERROR(INDEX(catalogue_description,MATCH(" + table.here(item, "price_product")
                + ",catalogue_id,0)),\"\")",
            "@")));
    table.add(Column.of("price_amount", "Price, " + money, 12, item -> row(item)
        .map(entry -> Entries.input(entry.getValue().amount().amount().doubleValue(), "#,##0.00##"))
        .orElseGet(Entries::blankInput)));
    text("price_per", "Per", 11, entry -> entry.getValue().per());
    table.add(Column.of("price_category", "Category", 12, item -> row(item)
            .map(entry -> Entries.input(entry.getValue().category().toString()))
            .orElseGet(Entries::blankInput))
        .oneOf(costs()));
    text("price_cost_code", "Cost code", 12, entry -> entry.getValue().costCode());
    text("price_quoted", "Quoted on", 12, entry -> entry.getValue().effective());
  }

  static List<String> costs() {
    return Category.costs().stream().map(Category::toString).toList();
  }

  private Optional<Map.Entry<String, Price>> row(int item) {
    return item < prices.size() ? Optional.of(prices.get(item)) : Optional.empty();
  }

  private void text(
      String name, String heading, double width, Function<Map.Entry<String, Price>, String> of) {
    table.add(Column.of(name, heading, width, item -> row(item)
        .map(of)
        .map(Entries::input)
        .orElseGet(Entries::blankInput)));
  }

  void write(Draft draft) {
    Sheets.head(
        sheet,
        "Prices",
        "What one pack costs before sales tax; shingles may be priced by the square.");
    table.write(draft);
    Sheets.table(sheet, HEADING, 1);
  }
}
