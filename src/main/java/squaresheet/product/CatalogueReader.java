package squaresheet.product;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/** Reads the rows of a catalogue, each on its own. */
final class CatalogueReader {

  private static final CheckInfo STRANGER = new CheckInfo(
      "product-column-unknown", Severity.WARNING, "A column of the catalogue is not understood");

  private final Headings headings;
  private final Where table;
  private final Map<String, Product> products = new LinkedHashMap<>();
  private final Map<String, Map<String, BigDecimal>> unused = new HashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  CatalogueReader(List<String> texts, Where table) {
    this.headings = new Headings(texts);
    this.table = table;
  }

  Read<Catalogue> read(List<Catalogue.Row> rows) {
    if (rows.isEmpty()) {
      return refuse("the catalogue must hold a heading line and a product or more, but holds none");
    }
    if (!headings.missing().isEmpty()) {
      return refuse("the catalogue must have the columns id, kind and pack, but lacks "
          + String.join(" and ", headings.missing()));
    }
    headings.strangers().forEach(this::stranger);
    rows.forEach(this::row);
    return products.isEmpty()
        ? Read.nothing(findings)
        : Read.of(new Catalogue(List.copyOf(products.values()), unused), findings);
  }

  private Read<Catalogue> refuse(String sentence) {
    return Read.nothing(new Finding(Complaints.NOT_READ, table, sentence));
  }

  private void stranger(String heading) {
    findings.add(new Finding(
        STRANGER,
        table,
        "no column '" + heading + "', so it is not read"
            + Neighbours.sentence(heading, Headings.all())));
  }

  private void row(Catalogue.Row row) {
    Line line = new Line(headings, row);
    new ProductReader(line).read().ifPresent(product -> {
      if (products.putIfAbsent(product.id(), product) != null) {
        line.says(
            Complaints.NOT_READ,
            "id",
            "id must be used once, but '" + product.id() + "' stands above already");
      } else {
        unused(product, line);
      }
    });
    findings.addAll(line.findings());
  }

  private void unused(Product product, Line line) {
    Set<String> used = ProductWriter.cells(product).keySet();
    Map<String, BigDecimal> numbers = new HashMap<>();
    for (String column : Headings.numbers()) {
      String heading = Headings.written(column);
      if (!used.contains(heading)) {
        line.unused(column).ifPresent(number -> numbers.put(heading, number));
      }
    }
    if (!numbers.isEmpty()) {
      unused.put(product.id(), Map.copyOf(numbers));
    }
  }
}
