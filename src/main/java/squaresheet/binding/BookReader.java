package squaresheet.binding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.roof.PlaneNotes;
import squaresheet.sheet.Address;
import squaresheet.sheet.Workbook;
import squaresheet.units.Pitch;

/** Reads a workbook of any layout through what is bound of it. */
final class BookReader {

  /** What an item of a table is called. */
  private static final Map<String, String> SUBJECTS = Map.of(
      "planes", "plane",
      "edges", "edge",
      "openings", "opening",
      "corners", "corner",
      "prices", "price",
      "materials", "item",
      "estimate", "line",
      "payments", "payment");

  /** The values beside labels that the way to the price needs. */
  private static final List<String> NEEDED = List.of("waste_rate", "tax_rate", "price_total");

  private final Workbook book;
  private final String file;
  private final List<Guess> bound;
  private final List<Finding> findings;
  private final Map<Where.OfItem, Address> cells = new LinkedHashMap<>();
  /** The subjects of the items so far. */
  private final Set<String> called = new HashSet<>();

  private final Map<Where.OfItem, String> units = new LinkedHashMap<>();
  /** The titles over items of the table being read, by their rows. */
  private NavigableMap<Integer, String> bands = new TreeMap<>();

  private final List<BoundJob.Part> coverage = new ArrayList<>();
  private final Map<String, PlaneNotes> planes = new LinkedHashMap<>();
  private final List<BoundBook.Table> read = new ArrayList<>();

  BookReader(Workbook book, String file, List<Guess> bound, List<Finding> before) {
    this.book = book;
    this.file = file;
    this.bound = bound;
    this.findings = new ArrayList<>(before);
  }

  BoundBook read() {
    List<FoundTable> tables = new BoundTables(book, file)
        .of(bound.stream().filter(Guess::isHeading).toList()).stream()
            .map(this::withUnits)
            .toList();
    boolean several =
        tables.stream().filter(table -> table.table().equals("planes")).count() > 1;
    tables.forEach(table -> table(table, several));
    bound.stream().filter(guess -> !guess.isHeading()).forEach(this::value);
    long labels = NEEDED.stream()
        .filter(name -> cells.containsKey(new Where.OfItem("job", name)))
        .count();
    coverage.add(new BoundJob.Part("waste rate, tax rate and price", (int) labels, NEEDED.size()));
    missing(tables);
    return new BoundBook(new CellMap(cells), units, planes, read, coverage, findings);
  }

  /** The table without columns of bare lengths or areas of which nobody says the unit. */
  private FoundTable withUnits(FoundTable table) {
    List<FoundColumn> known = new ArrayList<>();
    for (FoundColumn column : table.columns()) {
      boolean bare = table.rows(FoundTable.Row.DATA).stream()
          .anyMatch(row -> Cells.number(table.grid().cell(row, column.at())).isPresent());
      if (column.meaning().isMeasured() && column.unit().isEmpty() && bare) {
        findings.add(Complaint.NOT_BOUND.at(
            table.grid().where(table.heading(), column.at()),
            "the unit of '" + column.heading().text()
                + "' is not said, so its numbers are not read and not checked"));
      } else {
        known.add(column);
      }
    }
    return table.with(known);
  }

  private void value(Guess guess) {
    if (guess.wantsUnit() && Cells.number(book.cell(guess.at())).isPresent()) {
      findings.add(Complaint.NOT_BOUND.at(
          new Where.InCell(file, guess.at()),
          "the unit of the " + guess.inWords() + " is not said; it is not checked"));
      return;
    }
    put(new Where.OfItem("job", guess.property()), guess.at(), guess.unit());
  }

  private void put(Where.OfItem item, Address cell, String unit) {
    boolean squares = item.property().endsWith("squares");
    cells.putIfAbsent(item, cell);
    called.add(item.subject());
    if (!unit.isEmpty() || squares) {
      units.putIfAbsent(item, unit.isEmpty() ? "squares" : unit);
    }
  }

  private void table(FoundTable table, boolean several) {
    String key = key(table);
    bands = table.bands();
    Map<Integer, String> subjects = new TreeMap<>();
    for (int row : table.rows(FoundTable.Row.DATA)) {
      String subject = subject(table, key, row, several);
      subjects.put(row, subject);
      for (FoundColumn column : table.columns()) {
        table
            .address(row, column.property())
            .ifPresent(cell -> put(
                new Where.OfItem(subject, column.property()),
                cell,
                column.unit().map(UnitWord::toString).orElse("")));
      }
    }
    int items = subjects.size();
    Map<Integer, String> sums = totals(table, several);
    unbound(table, items);
    if (table.table().equals("planes")) {
      EstimatorPlanes estimator = new EstimatorPlanes(table, book.date1904(), pitch());
      estimator.planes().forEach((row, plane) -> planes.put(subjects.get(row), plane));
      findings.addAll(estimator.findings());
    }
    subjects.putAll(sums);
    read.add(new BoundBook.Table(
        table.table(),
        table.grid().name(),
        subjects.entrySet().stream()
            .map(entry -> new BoundBook.Row(entry.getValue(), sums.containsKey(entry.getKey())))
            .toList()));
  }

  /** The pitch beside a label, which holds for planes that have none of their own. */
  private Optional<Pitch> pitch() {
    return bound.stream()
        .filter(guess -> !guess.isHeading() && guess.property().equals("pitch"))
        .findFirst()
        .flatMap(guess -> EstimatorPlanes.tape(book.date1904())
            .pitch(book.cell(guess.at()), guess.unit(), new Where.InCell(file, guess.at()))
            .value());
  }

  private static String key(FoundTable table) {
    return table.columns().stream()
        .filter(column -> column.meaning().role() == Meaning.Role.KEY)
        .map(FoundColumn::property)
        .findFirst()
        .orElse("");
  }

  /** The band of the table that the row stands under; empty where there is none. */
  private String band(int row) {
    Map.Entry<Integer, String> band = bands.lowerEntry(row);
    return band == null ? "" : band.getValue();
  }

  /** The item's name; where two share one, the place tells them apart. */
  private String subject(FoundTable table, String key, int row, boolean several) {
    String kind = SUBJECTS.getOrDefault(table.table(), table.table());
    String name = table.text(row, key);
    String on =
        several && table.table().equals("planes") ? " on " + table.grid().name() : "";
    String band = band(row);
    String subject = kind + " " + (band.isEmpty() ? "" : band + ", ") + name + on;
    boolean taken = called.contains(subject);
    return taken || name.isEmpty() ? subject + " in row " + (row + 1) : subject;
  }

  /** The rows that add up others, by what they are called. */
  private Map<Integer, String> totals(FoundTable table, boolean several) {
    String kind = SUBJECTS.getOrDefault(table.table(), table.table());
    String on =
        several && table.table().equals("planes") ? " on " + table.grid().name() : "";
    List<Integer> rows = table.rows(FoundTable.Row.TOTAL);
    Map<Integer, String> sums = new TreeMap<>();
    for (int row : rows) {
      boolean last = row == rows.get(rows.size() - 1);
      String band = band(row);
      String of = last ? "all " + kind + "s" : "all " + kind + "s of " + band;
      boolean taken = sums.containsValue(of + on) || called.contains(of + on);
      String subject = taken ? of + on + " on " + table.grid().name() + ", " + (row + 1) : of + on;
      sums.put(row, subject);
      for (FoundColumn column : table.columns()) {
        if (!table.cell(row, column.property()).isBlank()
            && column.meaning().holds().isNumeric()) {
          table
              .address(row, column.property())
              .ifPresent(cell -> put(
                  new Where.OfItem(subject, column.property()),
                  cell,
                  column.unit().map(UnitWord::toString).orElse("")));
        }
      }
    }
    return sums;
  }

  /** Columns with numbers that nothing is bound to are said: they are not checked. */
  private void unbound(FoundTable table, int items) {
    int numbers = 0;
    int known = 0;
    for (int at = table.first(); at <= table.last(); at++) {
      int column = at;
      boolean bind = table.columns().stream().anyMatch(it -> it.at() == column);
      boolean number = table.rows(FoundTable.Row.DATA).stream()
          .map(row -> table.grid().cell(row, column))
          .anyMatch(cell -> Cells.number(cell).isPresent());
      numbers += number || bind ? 1 : 0;
      known += bind ? 1 : 0;
      if (number && !bind) {
        findings.add(Complaint.NOT_BOUND.at(
            table.grid().where(table.heading(), column),
            "the column '" + table.grid().text(table.heading(), column)
                + "' is not bound to anything; its cells are not checked"));
      }
    }
    coverage.add(new BoundJob.Part(
        table.table() + " on " + table.grid().name() + " (" + items + " rows)", known, numbers));
  }

  private void missing(List<FoundTable> tables) {
    Set<String> there = tables.stream().map(FoundTable::table).collect(Collectors.toSet());
    for (List<String> needed : List.of(List.of("planes"), List.of("materials", "estimate"))) {
      if (needed.stream().noneMatch(there::contains)) {
        coverage.add(new BoundJob.Part(needed.get(0), 0, 1));
        findings.add(Complaint.NOT_BOUND.at(
            new Where.InFile(file),
            "no table of " + needed.get(0) + " is bound; what stands in it is not checked"));
      }
    }
  }
}
