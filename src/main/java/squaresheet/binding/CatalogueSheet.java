package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.product.Catalogue;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.units.Length;

/** Reads the catalogue of a job workbook. */
final class CatalogueSheet {

  private final String file;
  private final NamedCells names;
  private final BookValues values;

  CatalogueSheet(String file, NamedCells names, BookValues values) {
    this.file = file;
    this.names = names;
    this.values = values;
  }

  Read<Catalogue> read() {
    Optional<Address> id = names.cell("catalogue_id");
    Optional<Block> block = names.block("catalogue_id");
    if (id.isEmpty() || block.isEmpty()) {
      return Read.of(
          new Catalogue(List.of()),
          List.of(Complaint.NAME_MISSING.at(
              new Where.InFile(file),
              "the defined name catalogue_id must stand for the codes of the products, but does not;"
                  + " no product is read")));
    }
    String sheet = id.get().sheet();
    Map<String, Integer> columns = columns(sheet);
    List<Catalogue.Row> rows = new ArrayList<>();
    for (int row = block.get().first().row(); row <= block.get().last().row(); row++) {
      Catalogue.Row read = row(sheet, row, columns);
      if (!read.cells().getOrDefault("id", "").isEmpty() || hasNumbers(read)) {
        rows.add(read);
      }
    }
    return Catalogue.read(List.copyOf(columns.keySet()), rows, new Where.InCell(file, id.get()));
  }

  private static boolean hasNumbers(Catalogue.Row row) {
    return row.cells().values().stream().filter(text -> !text.isEmpty()).count() > 2;
  }

  private Map<String, Integer> columns(String sheet) {
    Map<String, Integer> columns = new LinkedHashMap<>();
    for (String column : Catalogue.headings()) {
      names
          .cell("catalogue_" + column)
          .filter(cell -> cell.sheet().equalsIgnoreCase(sheet))
          .ifPresent(cell -> columns.put(column, cell.ref().column()));
    }
    return columns;
  }

  private Catalogue.Row row(String sheet, int row, Map<String, Integer> columns) {
    Map<String, String> cells = new LinkedHashMap<>();
    columns.forEach((column, at) -> {
      String text = text(column, values.cell(new Address(sheet, new Ref(row, at))));
      if (!text.isEmpty()) {
        cells.put(column, text);
      }
    });
    return new Catalogue.Row(
        cells,
        heading -> new Where.InCell(
            file,
            new Address(
                sheet,
                new Ref(row, columns.getOrDefault(heading, columns.getOrDefault("id", 0))))));
  }

  /** Lengths are put so that they read back exactly: 13.267716535433072 is 337 mm. */
  private static String text(String column, Cell cell) {
    boolean length = column.endsWith("_in") && !column.endsWith("sq_in");
    return length && cell.stored() instanceof Content.Numeric number
        ? Length.nearestInches(number.value()).toString()
        : Cells.text(cell);
  }
}
