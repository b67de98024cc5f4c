package squaresheet.product;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import squaresheet.finding.Finding;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Read;
import squaresheet.finding.TextTable;
import squaresheet.finding.Where;

/**
 * The products a company uses, each with an id of its own. Text form: a table, one product a line, units in the headings,
 * lines starting with # skipped.
 *
 * @param products in the order of the table
 * @param unused by product and heading, the numbers that stand in its row but say nothing about its kind, such as a coverage
 */
public record Catalogue(List<Product> products, Map<String, Map<String, BigDecimal>> unused) {

  public Catalogue {
    products = List.copyOf(products);
    unused = Map.copyOf(unused);
    if (products.stream().map(Product::id).distinct().count() < products.size()) {
      throw new IllegalArgumentException(
          "every product must have an id of its own, but two share one");
    }
  }

  /** A catalogue of products without any number beside those that they use. */
  public Catalogue(List<Product> products) {
    this(products, Map.of());
  }

  /**
   * One line of a table of products, wherever it comes from.
   *
   * @param cells heading to text; a missing heading is an empty cell
   * @param places heading to the place of its cell; asked with an empty heading for the line as a whole
   */
  public record Row(Map<String, String> cells, Function<String, Where> places) {

    public Row {
      cells = Map.copyOf(cells);
    }
  }

  /** The headings of a catalogue as this library writes one. */
  public static List<String> headings() {
    return Headings.all();
  }

  /** A product as a line under those headings, heading to text; empty cells are left out. Reading it back gives an equal one. */
  public static Map<String, String> cells(Product product) {
    return ProductWriter.cells(product);
  }

  /** Reads a file in UTF-8. */
  public static Read<Catalogue> read(Path file) {
    String name = String.valueOf(file.getFileName());
    try {
      return read(Files.readString(file), name);
    } catch (IOException | UncheckedIOException unreadable) {
      return Read.nothing(new Finding(
          Complaints.NOT_READ,
          new Where.InFile(name),
          "the catalogue must be a readable text file in UTF-8, but cannot be read"));
    }
  }

  /** Reads the text of a file of that name. Products that cannot be read are left out and said. */
  public static Read<Catalogue> read(String text, String file) {
    return TextTable.read(text, file, "the catalogue", Complaints.NOT_READ)
        .flatMap(table -> read(
            table.headings(),
            table.lines().stream()
                .map(line -> new Row(
                    table.cells(line), heading -> new Where.InLine(file, line.number(), heading)))
                .toList(),
            new Where.InFile(file)));
  }

  /** Reads rows that stand under these headings. Products that cannot be read are left out and said. */
  public static Read<Catalogue> read(List<String> headings, List<Row> rows, Where table) {
    return new CatalogueReader(headings, table).read(rows);
  }

  /** The product of that id, or its nearest neighbours. */
  public Read<Product> find(String id, Where asked) {
    Optional<Product> product =
        products.stream().filter(one -> one.id().equals(id)).findFirst();
    return product
        .map(Read::of)
        .orElseGet(() -> Read.nothing(new Finding(
            Complaints.UNKNOWN,
            asked,
            "no product '" + id + "'"
                + Neighbours.sentence(id, products.stream().map(Product::id).toList()))));
  }

  /** The products that can play a part, in the order of the table. */
  public List<Product> candidates(Role role) {
    return products.stream().filter(product -> product.kind() == role.kind()).toList();
  }
}
