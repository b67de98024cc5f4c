package squaresheet.product;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import squaresheet.finding.Finding;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Read;
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
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
        .commentStrategy(CommentStrategy.SKIP)
        .ofNamedCsvRecord(text.replace("\uFEFF", ""))) {
      List<String> headings = new ArrayList<>();
      List<Row> rows = new ArrayList<>();
      csv.forEach(line -> {
        headings.clear();
        headings.addAll(line.getHeader());
        rows.add(row(line, file));
      });
      return read(headings, rows, new Where.InFile(file));
    } catch (IOException | CsvParseException broken) {
      return Read.nothing(new Finding(
          Complaints.NOT_READ,
          new Where.InFile(file),
          "the catalogue must be a table of comma-separated values with one heading line, but is not: "
              + broken.getMessage()));
    }
  }

  private static Row row(NamedCsvRecord line, String file) {
    Map<String, String> cells = new LinkedHashMap<>();
    line.getHeader()
        .forEach(heading -> cells.put(heading, line.findField(heading).orElse("")));
    long number = line.getStartingLineNumber();
    return new Row(cells, heading -> new Where.InLine(file, number, heading));
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
