package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.sheet.Sheet;

/**
 * A table of a new workbook: a title, a line about it, headings, items, a free row, totals. Each column is a defined name
 * that reaches over the free row, so that rows inserted above it are counted.
 */
final class TableDraft {

  /** Short blank row over which rows are inserted. */
  private static final double FREE_ROW_POINTS = 6;

  private final DraftSheet sheet;
  private final int heading;
  private final int rows;
  private final List<Column> columns = new ArrayList<>();

  /** A table of so many items under headings in this row. */
  TableDraft(DraftSheet sheet, int heading, int rows) {
    this.sheet = sheet;
    this.heading = heading;
    this.rows = rows;
  }

  TableDraft add(Column column) {
    columns.add(column);
    return this;
  }

  int rows() {
    return rows;
  }

  boolean has(String name) {
    return columns.stream().anyMatch(column -> column.name().equals(name));
  }

  private int column(String name) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no column " + name + " on " + sheet.name());
  }

  Ref ref(int item, String name) {
    return new Ref(heading + 1 + item, column(name));
  }

  Address address(int item, String name) {
    return new Address(sheet.name(), ref(item, name));
  }

  /** As formulas of the same row spell it: {@code $F5}. */
  String here(int item, String name) {
    Ref ref = ref(item, name);
    return "$" + Ref.letters(ref.column()) + (ref.row() + 1);
  }

  /** As formulas elsewhere spell it: {@code Planes!$F5}. */
  String there(int item, String name) {
    return Address.quoted(sheet.name()) + "!" + here(item, name);
  }

  /** The cells of a column with the free row below them. */
  Block block(String name) {
    return new Block(ref(0, name), ref(rows, name));
  }

  /** The row under the table. */
  int end() {
    return heading + rows + 2 + (hasTotals() ? 1 : 0);
  }

  private boolean hasTotals() {
    return columns.stream().anyMatch(Column::summed);
  }

  /** Writes headings, items, names and totals. */
  void write(Draft draft) {
    for (int at = 0; at < columns.size(); at++) {
      Column column = columns.get(at);
      sheet.put(new Ref(heading, at), Entry.text(column.heading()).as(Role.HEADING));
      sheet.width(at, Math.max(column.width(), sheet.widths().getOrDefault(at, 0.0)));
      for (int item = 0; item < rows; item++) {
        sheet.put(new Ref(heading + 1 + item, at), column.cell().apply(item));
      }
      if (column.name().contains("_")) {
        draft.name(column.name(), fixed(block(column.name())));
      }
      choices(column);
    }
    sheet.height(heading + 1 + rows, FREE_ROW_POINTS);
    if (hasTotals()) {
      totals();
    }
  }

  private void choices(Column column) {
    if (!column.choices().isEmpty()) {
      sheet.validate(Sheet.Validation.choice(
          block(column.name()),
          column.choices(),
          "one of: " + String.join(", ", column.choices())));
    }
  }

  private String fixed(Block block) {
    return Address.quoted(sheet.name()) + "!" + dollars(block.first()) + ":"
        + dollars(block.last());
  }

  static String dollars(Ref ref) {
    return "$" + Ref.letters(ref.column()) + "$" + (ref.row() + 1);
  }

  private void totals() {
    int row = heading + rows + 2;
    sheet.put(new Ref(row, 0), Entry.text("Total").as(Role.TOTAL));
    for (int at = 1; at < columns.size(); at++) {
      Column column = columns.get(at);
      Optional<Entry> like = rows == 0 ? Optional.empty() : sheet.entry(new Ref(heading + 1, at));
      String format = like.map(Entry::format).orElse("General");
      sheet.put(
          new Ref(row, at),
          column.summed()
              ? Entry.formula("SUM(" + plain(block(column.name())) + ")", new Content.Blank())
                  .as(Role.TOTAL)
                  .format(format)
              : Entry.blank().as(Role.TOTAL));
    }
  }

  private static String plain(Block block) {
    return block.first() + ":" + block.last();
  }
}
