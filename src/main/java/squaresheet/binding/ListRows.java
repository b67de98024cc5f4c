package squaresheet.binding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/**
 * What is typed on a sheet of the company's lists or of the roof and has no effect: rows outside the list, rows that do not name what they
 * are for, rates and payments that no line of the estimate reads. Each is told at its cell.
 */
final class ListRows {

  private final Workbook book;
  private final String file;
  private final NamedCells names;
  private final BookValues values;
  private final List<FoundTable> roof;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, List<Block>> read = new HashMap<>();

  /**
   * Looks at a workbook.
   *
   * @param roof the tables of the roof, with the rows that their reader takes
   */
  ListRows(Workbook book, String file, NamedCells names, BookValues values, List<FoundTable> roof) {
    this.book = book;
    this.file = file;
    this.names = names;
    this.values = values;
    this.roof = roof;
  }

  List<Finding> findings() {
    Map<String, List<Place>> sheets = new java.util.LinkedHashMap<>();
    for (Listed list : Listed.ALL) {
      place(list).ifPresent(place -> sheets
          .computeIfAbsent(place.sheet.name(), it -> new ArrayList<>())
          .add(place));
    }
    sheets.values().forEach(this::sheet);
    rates();
    payments();
    return findings;
  }

  /**
   * Where a list stands.
   *
   * @param heading the row of its headings
   * @param block the rows it takes in, in the column of its key; none where each row has a name of its own
   */
  private record Place(Listed list, Sheet sheet, int heading, Optional<Block> block) {
    boolean takes(int row) {
      return block
          .filter(it -> it.first().row() <= row && row <= it.last().row())
          .isPresent();
    }

    /** The sum under the list. */
    boolean isTotal(int row) {
      return block.filter(it -> row == it.last().row() + 1).isPresent()
          && sheet.row(row).anyMatch(placed -> placed.cell().isFormula());
    }
  }

  private Optional<Place> place(Listed list) {
    Optional<Address> first = names.cell(list.anchor());
    Optional<Sheet> sheet = first.flatMap(it -> book.sheet(it.sheet()));
    Optional<Block> block =
        list.columns().isEmpty() ? Optional.empty() : names.block(list.anchor());
    return sheet.map(it -> new Place(list, it, heading(list, it, first.get().ref()), block));
  }

  /** The row of the headings: rows may have been put between them and the list. */
  private static int heading(Listed list, Sheet sheet, Ref first) {
    int column = list.columns().isEmpty() ? 0 : first.column();
    return IntStream.iterate(first.row() - 1, row -> row >= 0, row -> row - 1)
        .filter(row -> list.isHeading(Cells.text(sheet.cell(new Ref(row, column)))))
        .findFirst()
        .orElse(first.row() - 1);
  }

  private void sheet(List<Place> places) {
    Sheet sheet = places.get(0).sheet;
    Set<Integer> ours = new HashSet<>();
    book.names().stream()
        .filter(name -> name.cell().filter(it -> isOn(it, sheet)).isPresent())
        .filter(name -> name.block().filter(it -> it.rows() == 1).isPresent())
        .filter(name -> Listed.names().noneMatch(name.name()::equalsIgnoreCase))
        .forEach(name -> ours.add(name.cell().orElseThrow().ref().row()));
    int top = places.stream().mapToInt(Place::heading).min().orElse(0);
    sheet.rows().filter(row -> row > top && !ours.contains(row)).forEach(row -> {
      Optional<Place> taking = places.stream().filter(place -> place.takes(row)).findFirst();
      if (roof.stream().noneMatch(table -> isOf(table, sheet, row))) {
        taking.ifPresentOrElse(place -> unnamed(place, row), () -> outside(places, row));
      }
    });
  }

  /** Whether the reader of the roof takes the row as one of its table's. */
  private static boolean isOf(FoundTable table, Sheet sheet, int row) {
    return table.grid().name().equalsIgnoreCase(sheet.name())
        && table.rows().get(row) == FoundTable.Row.DATA;
  }

  private static boolean isOn(Address cell, Sheet sheet) {
    return cell.sheet().equalsIgnoreCase(sheet.name());
  }

  /** A row of a list that does not say what it is for. */
  private void unnamed(Place place, int row) {
    List<Ref> typed = typed(place, row);
    int key = place.block.orElseThrow().first().column();
    boolean said = place.list.what().equals("the products") && typed.size() > 2;
    if (typed.isEmpty() || !text(place.sheet, new Ref(row, key)).isEmpty() || said) {
      return;
    }
    says(
        place,
        typed,
        "a row of " + place.list.what() + " must name its " + place.list.key()
            + ", but names none and counts for nothing: " + written(place.sheet, typed));
  }

  private void outside(List<Place> places, int row) {
    Place place = places.stream()
        .filter(it -> it.heading < row)
        .reduce((one, other) -> one.heading > other.heading ? one : other)
        .orElse(places.get(0));
    List<Ref> typed = typed(place, row);
    String first = typed.isEmpty() ? "" : text(place.sheet, typed.get(0));
    boolean title = typed.size() == 1 && places.stream().anyMatch(it -> row == it.heading - 1);
    boolean ours = places.stream().anyMatch(it -> row == it.heading || it.isTotal(row));
    if (ours
        || title
        || typed.isEmpty()
        || place.list.isHeading(first)
        || isRead(place.sheet, typed)) {
      return;
    }
    boolean number =
        typed.stream().anyMatch(ref -> isNumber(place.sheet.cell(ref)) && ref.column() > 0);
    if (number || typed.size() >= place.list.texts()) {
      says(
          place,
          typed,
          "a row of " + place.list.what() + " must stand " + inside(place)
              + ", but stands outside and counts for nothing: " + written(place.sheet, typed));
    } else {
      findings.add(Complaint.WORDS_LEFT.at(
          where(place.sheet, typed.get(0)),
          "words outside " + place.list.what() + " are for people and count for nothing: "
              + written(place.sheet, typed)));
    }
  }

  private static String inside(Place place) {
    return place
        .block
        .map(it -> "in rows " + (it.first().row() + 1) + " to " + (it.last().row() + 1)
            + ", the short row included (insert a row there)")
        .orElse("among those that the workbook knows, each with its name beside it");
  }

  /** What a person typed in the row, under the columns of the list. */
  private List<Ref> typed(Place place, int row) {
    Set<Integer> columns = new HashSet<>();
    place.list.columns().forEach(name -> names
        .cell(name)
        .ifPresent(cell -> columns.add(cell.ref().column())));
    return place
        .sheet
        .row(row)
        .filter(placed ->
            place.list.columns().isEmpty() || columns.contains(placed.ref().column()))
        .filter(placed -> placed.cell().isFormula()
            ? isNumber(placed.cell())
            : !Cells.text(placed.cell()).isEmpty())
        .map(Sheet.Placed::ref)
        .toList();
  }

  /** A number that was typed, as itself or as a sum like {@code =450*2}. */
  private static boolean isNumber(Cell cell) {
    if (!cell.isFormula()) {
      return cell.stored() instanceof Content.Numeric;
    }
    Optional<Formula> formula = Formula.parse(cell.formula()).value();
    return formula
        .filter(it -> it.references().isEmpty() && it.names().isEmpty())
        .isPresent();
  }

  private String text(Sheet sheet, Ref ref) {
    return Cells.text(values.cell(new Address(sheet.name(), ref)));
  }

  private String written(Sheet sheet, List<Ref> cells) {
    return "'" + String.join(" | ", cells.stream().map(it -> text(sheet, it)).toList()) + "'";
  }

  private Where where(Sheet sheet, Ref ref) {
    return new Where.InCell(file, new Address(sheet.name(), ref));
  }

  private void says(Place place, List<Ref> typed, String sentence) {
    findings.add(Complaint.ROW_UNREAD.at(where(place.sheet, typed.get(0)), sentence));
  }

  /** Whether a formula of another row reads one of the cells: then the row has the effect it was given. */
  private boolean isRead(Sheet sheet, List<Ref> cells) {
    List<Block> blocks = read.computeIfAbsent(sheet.name(), it -> reading(sheet));
    return cells.stream().anyMatch(cell -> blocks.stream().anyMatch(block -> block.contains(cell)));
  }

  /** The cells of the sheet that formulas of other rows read. */
  private List<Block> reading(Sheet sheet) {
    String called = sheet.name().toLowerCase(Locale.ROOT);
    List<Block> blocks = new ArrayList<>();
    for (Sheet one : book.sheets()) {
      boolean here = one == sheet;
      one.cells()
          .filter(placed -> placed.cell().isFormula())
          .filter(
              placed -> here || placed.cell().formula().toLowerCase(Locale.ROOT).contains(called))
          .forEach(placed -> references(placed.cell(), here, sheet)
              .filter(block -> !here || !holds(block, placed.ref().row()))
              .forEach(blocks::add));
    }
    return blocks;
  }

  private static boolean holds(Block block, int row) {
    return block.first().row() <= row && row <= block.last().row();
  }

  private static Stream<Block> references(Cell cell, boolean here, Sheet sheet) {
    return Formula.parse(cell.formula()).value().stream()
        .flatMap(formula -> formula.references().stream())
        .filter(it -> it.sheet().isEmpty() ? here : it.sheet().equalsIgnoreCase(sheet.name()))
        .map(Node.Reference::block);
  }

  /** Rates that no line of the estimate takes up: it reads none of theirs, and not every rate of that item has its line. */
  private void rates() {
    List<Address> rates = rows("rate_item");
    List<String> items = rates.stream().map(this::said).toList();
    List<String> lines =
        rows("line_item").stream().map(line -> itemOf(said(line), items)).toList();
    for (Address rate : rates) {
      Sheet sheet = book.sheet(rate.sheet()).orElseThrow();
      String item = said(rate);
      Optional<Ref> amount =
          names.cell("rate_amount").map(it -> new Ref(rate.ref().row(), it.ref().column()));
      boolean isTaken = amount.filter(it -> isRead(sheet, List.of(it))).isPresent()
          || Collections.frequency(lines, item) >= Collections.frequency(items, item);
      if (!isTaken) {
        noLine(
            rate,
            "the rate of '" + Cells.text(values.cell(rate)) + "'",
            "insert a line of that name among the costs");
      }
    }
  }

  private String said(Address cell) {
    return Cells.text(values.cell(cell)).toLowerCase(Locale.ROOT);
  }

  /** The item that a line is of: the longest that it is called by, alone or with a band behind a comma. */
  private static String itemOf(String line, List<String> items) {
    return items.stream()
        .filter(item -> line.equals(item) || line.startsWith(item + ", "))
        .max(Comparator.comparingInt(String::length))
        .orElse(line);
  }

  /** Payments that the estimate does not list: its shares stand in the column beside their names. */
  private void payments() {
    Optional<Address> total = names.cell("payment_total");
    if (total.isEmpty() || total.get().ref().column() == 0) {
      return;
    }
    Set<String> listed = new HashSet<>();
    Address sum = total.get();
    for (int row = sum.ref().row() - 1; row >= 0; row--) {
      Cell amount = book.cell(new Address(sum.sheet(), new Ref(row, sum.ref().column())));
      if (amount.stored() instanceof Content.Text || amount.isBlank()) {
        break;
      }
      Address name = new Address(sum.sheet(), new Ref(row, sum.ref().column() - 1));
      listed.add(Cells.text(values.cell(name)));
    }
    for (Address payment : rows("payment_when")) {
      String when = Cells.text(values.cell(payment));
      if (!listed.contains(when)) {
        noLine(payment, "the payment '" + when + "'", "add its line above the payments' total");
      }
    }
  }

  private void noLine(Address at, String what, String cure) {
    findings.add(Complaint.ROW_UNREAD.at(
        new Where.InCell(file, at),
        what + " must have a line on the estimate, but has none, so it counts for nothing; " + cure
            + ", or put it into the company's list and import the tape sheet again"));
  }

  /** The cells of a named column that say something. */
  private List<Address> rows(String column) {
    Optional<Block> block = names.block(column);
    return names.cell(column).stream()
        .flatMap(first -> IntStream.range(0, block.map(Block::rows).orElse(0))
            .mapToObj(row -> new Address(first.sheet(), first.ref().plus(row, 0))))
        .filter(cell -> !Cells.text(values.cell(cell)).isEmpty())
        .toList();
  }
}
