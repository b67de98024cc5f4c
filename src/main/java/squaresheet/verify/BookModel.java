package squaresheet.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import squaresheet.binding.BoundBook;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** What the bound cells of a workbook of foreign layout should hold, by the cells that they follow from. */
final class BookModel {

  private static final Set<String> OF_THE_BINDING =
      Set.of("binding-does-not-fit", "binding-is-gone", "format-is-newer");

  private final Book book;
  private final BoundBook bound;
  private final Map<Address, BoundValue> values = new LinkedHashMap<>();
  private final List<DoubtedColumn> doubted = new ArrayList<>();
  private final Reckoning asModelled;
  private final List<EdgeTotal> edges;

  private BookModel(Book book, BoundBook bound) {
    this.book = book;
    this.bound = bound;
    PlaneValues planes = new PlaneValues(this);
    LineValues lines = new LineValues(this);
    bound.tables().forEach(table -> {
      planes.add(table);
      lines.add(table);
    });
    TotalValues totals = new TotalValues(this);
    bound.tables().forEach(totals::add);
    totals.addLabels();
    Map<Address, Value> should = new LinkedHashMap<>();
    values.forEach((cell, it) -> should.put(cell, new Value.Number(it.should().get(0))));
    asModelled = book.reckoning().putting(should);
    bound.tables().forEach(this::doubt);
    edges = new EdgeTotals(this).all();
  }

  /** The model of a workbook through what is bound of it; none of a job workbook of ours, which has a better one. */
  static Optional<BookModel> of(Book book) {
    return book.layout().map(layout -> new BookModel(book, layout.read()));
  }

  Book book() {
    return book;
  }

  BoundBook bound() {
    return bound;
  }

  Reckoning asModelled() {
    return asModelled;
  }

  /** The values whose columns are what their headings say. */
  Stream<BoundValue> values() {
    return values.values().stream()
        .filter(it -> doubted.stream().noneMatch(column -> column.contains(it)));
  }

  /** The lengths by kind of edge that the planes give too. */
  List<EdgeTotal> edges() {
    return edges;
  }

  List<DoubtedColumn> doubted() {
    return List.copyOf(doubted);
  }

  Optional<BoundValue> value(Address cell) {
    return Optional.ofNullable(values.get(cell));
  }

  /** What is said of a binding that no longer fits its workbook. */
  List<Finding> stale() {
    return bound.findings().stream()
        .filter(finding -> OF_THE_BINDING.contains(finding.info().id()))
        .toList();
  }

  /** The cells that were held against the model. */
  Set<Address> held() {
    Set<Address> held = new LinkedHashSet<>();
    values().filter(BoundValue::isHeld).map(BoundValue::at).forEach(held::add);
    edges.stream().flatMap(it -> it.parts().stream()).forEach(held::add);
    return held;
  }

  Optional<Address> cell(String subject, String property) {
    return bound.cells().cell(subject, property);
  }

  /** What a bound cell should hold, or else holds, in feet, square feet, rise per 12 or as a plain ratio. */
  OptionalDouble plain(String subject, String property) {
    Where.OfItem item = new Where.OfItem(subject, property);
    Optional<Address> cell = bound.cells().cell(item);
    if (cell.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble there = value(cell.get())
        .map(it -> OptionalDouble.of(it.should().get(0)))
        .orElseGet(() -> book.number(cell.get()));
    return there.isEmpty() ? there : bound.plain(item, book.cell(cell.get()), there.getAsDouble());
  }

  /** The same of what the cell holds as it stands. */
  OptionalDouble plainAsItStands(String subject, String property) {
    Where.OfItem item = new Where.OfItem(subject, property);
    return bound.cells().cell(item).stream()
        .flatMapToDouble(cell -> book.number(cell).stream()
            .flatMap(it -> bound.plain(item, book.cell(cell), it).stream()))
        .findFirst();
  }

  /** Says what a bound cell should hold; cells that hold nothing are left out. */
  void should(
      String subject,
      String property,
      BoundValue.Kind kind,
      List<Double> plain,
      double tolerance,
      String how) {
    Where.OfItem item = new Where.OfItem(subject, property);
    bound
        .cells()
        .cell(item)
        .filter(at -> !plain.isEmpty() && !book.cell(at).isBlank())
        .ifPresent(at -> values.putIfAbsent(
            at,
            new BoundValue(
                this,
                at,
                item,
                kind,
                plain.stream()
                    .map(it -> bound.inItsUnit(item, book.cell(at), it))
                    .toList(),
                tolerance,
                how)));
  }

  /** A column of which most cells do not fit is rather something else than wrong in most rows. */
  private void doubt(BoundBook.Table table) {
    Map<String, List<BoundValue>> columns = new LinkedHashMap<>();
    Map<String, List<BoundValue>> bySubject =
        values.values().stream().collect(Collectors.groupingBy(it -> it.item().subject()));
    table.rows().stream()
        .filter(row -> !row.isSum())
        .flatMap(row -> bySubject.getOrDefault(row.subject(), List.of()).stream())
        .filter(BoundValue::isHeld)
        .forEach(it -> columns
            .computeIfAbsent(it.item().property(), key -> new ArrayList<>())
            .add(it));
    columns.forEach((property, cells) -> {
      long fit = cells.stream().filter(BoundValue::isRight).count();
      if (fit * 2 < cells.size()) {
        doubted.add(new DoubtedColumn(this, table.name(), property, (int) fit, cells));
      }
    });
  }
}
