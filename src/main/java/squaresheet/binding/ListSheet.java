package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import squaresheet.finding.Where;
import squaresheet.product.Catalogue;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;
import squaresheet.units.Length;

/** Reads a list of a company off a sheet as the csv file of that list would have it, formulas worked out anew. */
final class ListSheet {

  /** The headings stand in one of these rows. */
  private static final int HEADINGS_WITHIN = 10;

  private static final int WIDEST = 64;

  private final Workbook book;
  private final String file;
  private final Sheet sheet;
  private final BookValues values;
  private final Map<String, Integer> columns = new LinkedHashMap<>();
  private int heading = -1;

  private ListSheet(Workbook book, String file, Sheet sheet, List<String> needed) {
    this.book = book;
    this.file = file;
    this.sheet = sheet;
    values = new BookValues(book);
    for (int row = 0; row < HEADINGS_WITHIN && heading < 0; row++) {
      Map<String, Integer> there = headings(row);
      if (there.keySet().containsAll(needed)) {
        columns.putAll(there);
        heading = row;
      }
    }
  }

  /** The list under these headings, on the first sheet that has them. */
  static Optional<Templates.Rows> find(Workbook book, String file, List<String> needed) {
    return book.sheets().stream()
        .map(sheet -> new ListSheet(book, file, sheet, needed))
        .filter(list -> list.heading >= 0)
        .findFirst()
        .map(ListSheet::rows);
  }

  private Map<String, Integer> headings(int row) {
    Map<String, Integer> headings = new LinkedHashMap<>();
    for (int column = 0; column < WIDEST; column++) {
      String text = Cells.text(sheet.cell(new Ref(row, column))).toLowerCase(Locale.ROOT);
      if (!text.isEmpty()) {
        headings.putIfAbsent(text.replace(' ', '_'), column);
      }
    }
    return headings;
  }

  private Templates.Rows rows() {
    List<Catalogue.Row> rows = new ArrayList<>();
    int last = sheet.used().map(Block::last).map(Ref::row).orElse(heading);
    sheet.rows().filter(row -> row > heading && row <= last).forEach(row -> {
      Map<String, String> cells = new LinkedHashMap<>();
      columns.forEach((column, at) -> cells.put(column, text(column, row, at)));
      String first = cells.values().iterator().next();
      if (cells.values().stream().anyMatch(text -> !text.isEmpty()) && !first.startsWith("#")) {
        rows.add(new Catalogue.Row(cells, column -> place(row, column)));
      }
    });
    return new Templates.Rows(List.copyOf(columns.keySet()), rows, place(heading, ""));
  }

  private Where place(int row, String column) {
    int at = columns.getOrDefault(column, columns.values().iterator().next());
    return new Where.InCell(file, new Address(sheet.name(), new Ref(row, at)));
  }

  /** What a person reads in the cell: a percentage with its sign, a day as a date, a length that reads back exactly. */
  private String text(String column, int row, int at) {
    Cell cell = values.cell(new Address(sheet.name(), new Ref(row, at)));
    OptionalDouble number = Cells.number(cell);
    if (number.isEmpty()) {
      return Cells.text(cell);
    }
    if (column.endsWith("_in") && !column.endsWith("sq_in")) {
      return Length.nearestInches(number.getAsDouble()).toString();
    }
    if (cell.format().contains("%")) {
      return Cells.plain(Math.round(number.getAsDouble() * 1e10) / 1e8) + "%";
    }
    boolean day = column.equals("effective") && !(cell.stored() instanceof Content.Text);
    return day
        ? book.date(number.getAsDouble())
            .map(it -> it.toLocalDate().toString())
            .orElseGet(() -> Cells.text(cell))
        : Cells.text(cell);
  }
}
