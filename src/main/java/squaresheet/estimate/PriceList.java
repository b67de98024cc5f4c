package squaresheet.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.product.Catalogue;
import squaresheet.product.Product;
import squaresheet.product.Shingle;
import squaresheet.tape.NumberReader;
import squaresheet.units.Money;

/**
 * What products cost. Text form: a table of product, price, what it is for, and cost code.
 *
 * @param prices product id to price
 */
public record PriceList(Map<String, Price> prices) {

  public PriceList {
    prices = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(prices));
  }

  /**
   * The price of a product.
   *
   * @param amount for one of what it is for, 0 or more
   * @param per what it is for: the pack, or a square of shingles
   * @param costCode the company's code, or empty
   * @param category what a line of it is for
   * @param effective since when, as written, or empty
   * @param where the place it was read at
   */
  public record Price(
      Money amount,
      String per,
      String costCode,
      Category category,
      String effective,
      Where where) {}

  private static final int DECIMALS = 4;

  private static final Table.Shape SHAPE = new Table.Shape(
      "the price list",
      Complaints.PRICE_NOT_READ,
      List.of("product", "price", "per"),
      List.of("category", "cost_code", "effective", "source", "note"));

  /** Reads a table of prices in this currency. Prices that cannot be read are left out and said. */
  public static Read<PriceList> read(String text, String file, String currency) {
    return read(Table.read(text, file, SHAPE), currency);
  }

  /** The same of rows that stand elsewhere, such as on a sheet. */
  public static Read<PriceList> read(List<Catalogue.Row> rows, Where table, String currency) {
    return read(Table.of(rows, table, SHAPE), currency);
  }

  private static Read<PriceList> read(Read<List<Table.Line>> table, String currency) {
    if (table.value().isEmpty()) {
      return Read.nothing(table.findings());
    }
    Map<String, Price> prices = new LinkedHashMap<>();
    List<Finding> findings = new ArrayList<>(table.findings());
    for (Table.Line line : table.value().get()) {
      String says = take(line, currency, prices);
      if (!says.isEmpty()) {
        findings.add(new Finding(Complaints.PRICE_NOT_READ, line.at("price"), says));
      }
    }
    return Read.of(new PriceList(prices), findings);
  }

  private static String take(Table.Line line, String currency, Map<String, Price> prices) {
    String product = line.text("product");
    String number = line.text("price");
    String category = line.text("category").isEmpty() ? "material" : line.text("category");
    Optional<BigDecimal> amount = NumberReader.POINT.amount(number, DECIMALS);
    if (amount.isEmpty()) {
      return "the price of " + product + " must be a number like 34.50, but reads '" + number + "'";
    }
    if (!Category.meant(category).isCost()) {
      return "the category of " + product
          + " must be material, disposal or another cost, but reads '" + category + "'";
    }
    Price price = new Price(
        Money.of(currency, amount.get()),
        line.text("per"),
        line.text("cost_code"),
        Category.meant(category),
        line.text("effective"),
        line.at("price"));
    return product.isEmpty()
        ? "the product of a price must be named, but is empty"
        : add(prices, product, price)
            ? ""
            : "the price of " + product + " must stand once, but stands above already";
  }

  /** Puts a price into a list, unless the product stands there already; spreadsheets take its id in any letter case. */
  public static boolean add(Map<String, Price> prices, String product, Price price) {
    return prices.keySet().stream().noneMatch(product::equalsIgnoreCase)
        && prices.put(product, price) == null;
  }

  /** The prices for which the catalogue has no product: no choice of a product comes to them. */
  public List<Finding> without(Catalogue catalogue) {
    List<String> ids = catalogue.products().stream().map(Product::id).toList();
    return prices.entrySet().stream()
        .filter(price -> ids.stream().noneMatch(price.getKey()::equalsIgnoreCase))
        .map(price -> new Finding(
            Complaints.PRICE_UNUSED,
            price.getValue().where(),
            "no product '" + price.getKey() + "' in the catalogue, so its price counts for nothing"
                + Neighbours.sentence(price.getKey(), ids)))
        .toList();
  }

  private Optional<Price> find(String product) {
    return prices.entrySet().stream()
        .filter(entry -> entry.getKey().equalsIgnoreCase(product))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** The price of a pack of the product; a price per square of shingles is turned into one per bundle. */
  Read<Price> perPack(Product product, Where asked) {
    Optional<Price> found = find(product.id());
    if (found.isEmpty()) {
      return Read.nothing(new Finding(
          Complaints.PRICE_MISSING,
          asked,
          "no price for " + product.id() + Neighbours.sentence(product.id(), prices.keySet())));
    }
    Price price = found.get();
    String pack = product.packing().pack().name();
    if (price.per().equals(pack)) {
      return Read.of(price);
    }
    if (price.per().equals("square") && product instanceof Shingle shingle) {
      BigDecimal bundles = BigDecimal.valueOf(shingle.packsPerSquare());
      return Read.of(new Price(
          price.amount().dividedBy(bundles),
          pack,
          price.costCode(),
          price.category(),
          price.effective(),
          price.where()));
    }
    return Read.nothing(new Finding(
        Complaints.PRICE_UNIT,
        price.where(),
        price.per(),
        pack,
        "the price of " + product.id() + " must be per " + pack + ", but is per " + price.per(),
        ""));
  }
}
