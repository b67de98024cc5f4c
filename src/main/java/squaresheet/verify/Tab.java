package squaresheet.verify;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;

/** One sheet of a book, with the tables that its runs of filled formulas show. */
final class Tab {

  private final Book book;
  private final Sheet sheet;
  private final Map<Axis, TextPlaces> places = new EnumMap<>(Axis.class);
  private final Map<Integer, List<Table>> byRow = new HashMap<>();
  private List<Table> tables = List.of();
  private boolean found;
  private final NavigableSet<Integer> hidden;
  private List<Address> unseen;

  Tab(Book book, Sheet sheet) {
    this.book = book;
    this.sheet = sheet;
    hidden = sheet
        .rows()
        .filter(sheet::isRowHidden)
        .boxed()
        .collect(Collectors.toCollection(TreeSet::new));
  }

  Book book() {
    return book;
  }

  Sheet sheet() {
    return sheet;
  }

  String name() {
    return sheet.name();
  }

  Address at(Ref ref) {
    return new Address(sheet.name(), ref);
  }

  Cell cell(Ref ref) {
    book.looks().spend(1);
    return sheet.cell(ref);
  }

  /** The hidden rows with cells from one row to another. */
  IntStream hiddenRows(int first, int last) {
    return hidden.subSet(first, true, last, true).stream().mapToInt(row -> row);
  }

  /** The cells whose number format shows nothing of a number, row by row. */
  synchronized List<Address> unseen() {
    if (unseen == null) {
      unseen = sheet
          .cells()
          .filter(placed -> placed.cell().format().replaceAll("\\s", "").matches(";;;?"))
          .map(placed -> at(placed.ref()))
          .toList();
    }
    return unseen;
  }

  boolean isHidden() {
    return sheet.visibility() != Sheet.Visibility.VISIBLE;
  }

  /** The text of a cell, without spaces at its ends; empty where it holds none. */
  String text(Ref ref) {
    book.looks().spend(1);
    return TextPlaces.text(sheet.cell(ref));
  }

  /** A number that was typed, not worked out. */
  boolean isTypedNumber(Ref ref) {
    book.looks().spend(1);
    Cell cell = sheet.cell(ref);
    return !cell.isFormula()
        && cell.stored() instanceof Content.Numeric
        && sheet.arrayAt(ref).isEmpty();
  }

  /** The tables of the sheet, those filled down before those filled across. */
  synchronized List<Table> tables() {
    if (!found) {
      found = true;
      List<Table> all = new ArrayList<>(new TableSearch(this, Axis.DOWN).tables());
      List<Table> down = List.copyOf(all);
      new TableSearch(this, Axis.ACROSS)
          .tables().stream()
              .filter(table -> down.stream().noneMatch(table::overlaps))
              .forEach(all::add);
      tables = List.copyOf(all);
    }
    return tables;
  }

  /** The tables by the rows of the sheet that they stand in. */
  private synchronized Map<Integer, List<Table>> rows() {
    if (byRow.isEmpty()) {
      tables().forEach(table -> table
          .rows()
          .forEach(row -> byRow.computeIfAbsent(row, key -> new ArrayList<>()).add(table)));
    }
    return byRow;
  }

  Optional<Table> tableAt(Ref ref) {
    return rows().getOrDefault(ref.row(), List.of()).stream()
        .filter(table -> table.contains(ref))
        .findFirst();
  }

  /** The nearest texts above a cell, up to three, nearest last: its headings. */
  String headings(Ref ref) {
    return heading(ref, Axis.DOWN);
  }

  /** The heading of a property: the first texts before the items, going back from the place. */
  String heading(Ref ref, Axis axis) {
    TextPlaces places = places(axis);
    StringBuilder words = new StringBuilder();
    int across = axis.across(ref);
    int texts = 0;
    int from = axis.along(ref);
    for (int at = places.any(from, across); at >= 0 && texts < 3; at = places.any(at, across)) {
      String text = headingText(axis.ref(at, across));
      if (texts > 0 && (text.isEmpty() || at < from - 1)) {
        break;
      }
      if (!text.isEmpty()) {
        words.insert(0, text + " ");
        texts++;
      }
      from = at;
    }
    return words.toString().strip();
  }

  /** The heading of a cell; in a table that of its property, found from the first item. */
  String headingOf(Ref ref) {
    return tableAt(ref)
        .map(table -> table.heading(table.axis().across(ref)))
        .orElseGet(() -> headings(ref));
  }

  private synchronized TextPlaces places(Axis axis) {
    return places.computeIfAbsent(axis, key -> new TextPlaces(sheet, key));
  }

  private String headingText(Ref ref) {
    return text(sheet.mergedAt(ref).map(block -> block.first()).orElse(ref));
  }

  /** The nearest text to the left in the same row: what the cell is called; empty where there is none. */
  String label(Ref ref) {
    int column = places(Axis.ACROSS).own(ref.column(), ref.row());
    return column < 0 ? "" : text(new Ref(ref.row(), column));
  }

  /** All texts of a row, in one line. */
  String rowText(int row) {
    StringBuilder words = new StringBuilder();
    sheet.row(row).forEach(placed -> {
      book.looks().spend(1);
      if (placed.cell().stored() instanceof Content.Text text) {
        words.append(text.value()).append(' ');
      }
    });
    return words.toString().strip();
  }

  /** What is written beside, above and pinned to a cell, for people to read. */
  String wordsAbout(Ref ref) {
    String note =
        Optional.ofNullable(sheet.comments().get(ref)).map(Sheet.Comment::text).orElse("");
    return heading(ref, Axis.DOWN) + " | " + rowText(ref.row()) + " | " + note;
  }

  /** The formula cells along an axis: across place, then along place, to the formula's relative form. */
  Map<Integer, Map<Integer, String>> forms(Axis axis) {
    Map<Integer, Map<Integer, String>> all = new TreeMap<>();
    sheet.cells().filter(placed -> placed.cell().isFormula()).forEach(placed -> book.formula(
            at(placed.ref()))
        .ifPresent(formula -> all.computeIfAbsent(axis.across(placed.ref()), key -> new TreeMap<>())
            .put(axis.along(placed.ref()), formula.relative(placed.ref()).toString())));
    return all;
  }

  /** Whether nothing at all stands on this line of the sheet. */
  boolean isEmptyLine(int along, Axis axis, int first, int last) {
    return IntStream.rangeClosed(first, last)
        .allMatch(across -> sheet.cell(axis.ref(along, across)).isBlank());
  }
}
