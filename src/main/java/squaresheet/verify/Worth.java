package squaresheet.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** What a finding is worth: what is ordered and charged now, against what it would be with the cell put right. */
final class Worth {

  private static final int MOST = 3;

  private final Book book;
  private final List<Output> outputs;

  /**
   * A result that leaves the office.
   *
   * @param cell the cell
   * @param name what it is called
   * @param unit what it counts, or empty
   */
  private record Output(Address cell, String name, String unit) {}

  Worth(Book book, Optional<Model> model) {
    this.book = book;
    outputs = model.map(Worth::orders).filter(all -> !all.isEmpty()).orElseGet(this::results);
  }

  private static List<Output> orders(Model model) {
    return model.cells().values().stream()
        .filter(it -> !it.rule().orders().isEmpty())
        .map(it -> new Output(it.at(), it.rule().label(), it.rule().unit().toString()))
        .toList();
  }

  /** The formulas that nobody reads and that stand outside of tables: what a workbook is made for. */
  private List<Output> results() {
    return book.formulas().keySet().stream()
        .filter(cell -> !book.links().isRead(cell))
        .filter(cell -> book.tab(cell.sheet()).tableAt(cell.ref()).isEmpty())
        .map(cell -> new Output(cell, book.tab(cell.sheet()).label(cell.ref()), ""))
        .toList();
  }

  Finding of(Finding finding) {
    if (!finding.worth().isEmpty() || finding.info().severity() == Severity.NOTE) {
      return finding;
    }
    return Folding.cell(finding)
        .map(cell -> new Remedy(book).of(finding, cell))
        .filter(put -> !put.isEmpty())
        .map(this::difference)
        .filter(worth -> !worth.isEmpty())
        .map(finding::worth)
        .orElse(finding);
  }

  private String difference(Map<Address, Value> put) {
    Reckoning right = book.reckoning().putting(put);
    Map<Output, Double> more = new LinkedHashMap<>();
    for (Output output : outputs) {
      if (book.value(output.cell()) instanceof Value.Number now
          && right.value(output.cell()) instanceof Value.Number then
          && !Shown.near(now, then)) {
        more.put(output, then.value() - now.value());
      }
    }
    List<String> words = new ArrayList<>();
    more.entrySet().stream()
        .sorted(Comparator.comparingDouble(
            (Map.Entry<Output, Double> entry) -> -Math.abs(entry.getValue())))
        .limit(MOST)
        .forEach(entry -> words.add(words(entry.getKey(), entry.getValue())));
    return String.join(", ", words)
        + (more.size() > MOST ? " and " + (more.size() - MOST) + " more" : "");
  }

  private static String words(Output output, double more) {
    String number = Shown.number(Math.abs(more));
    String unit = output.unit().isEmpty() ? "" : " " + output.unit();
    String name = output.name().isEmpty() ? output.cell().toString() : output.name();
    return name + ": " + number + unit + (more > 0 ? " too little" : " too much");
  }
}
