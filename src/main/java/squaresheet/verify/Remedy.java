package squaresheet.verify;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** What to put where, so that a finding is put right. */
final class Remedy {

  private final Book book;

  Remedy(Book book) {
    this.book = book;
  }

  /** Values for cells; nothing where the right value is not known. */
  Map<Address, Value> of(Finding finding, Address cell) {
    if (finding.expected().startsWith("=")) {
      return row(cell);
    }
    Optional<Value> exact = run(finding, cell).or(() -> written(finding.expected()));
    return exact.map(value -> Map.of(cell, value)).orElse(Map.of());
  }

  /** All formulas of the row, each with what was put before it. */
  private Map<Address, Value> row(Address cell) {
    Map<Address, Value> put = new HashMap<>();
    book.tab(cell.sheet()).tableAt(cell.ref()).ifPresent(table -> {
      int along = table.axis().along(cell.ref());
      for (Fill fill : table.fills()) {
        if (fill.cell(along).isBlank()) {
          Reckoning so = book.reckoning().putting(put);
          put.put(fill.at(along), so.evaluate(fill.wanted(along), fill.at(along)));
        }
      }
    });
    return put;
  }

  /** What the run's formula makes in the cell, where that is what the finding expects. */
  private Optional<Value> run(Finding finding, Address cell) {
    return book.tab(cell.sheet()).tableAt(cell.ref()).flatMap(table -> table.fills().stream()
        .filter(fill -> fill.form().across() == table.axis().across(cell.ref()))
        .map(fill -> fill.expected(table.axis().along(cell.ref())))
        .filter(value -> Shown.of(value).equals(finding.expected()))
        .findFirst());
  }

  private static Optional<Value> written(String expected) {
    String bare = expected.replace(",", "").replaceAll(":12$", "");
    return bare.matches("-?\\d+(\\.\\d+)?")
        ? Optional.of(new Value.Number(Double.parseDouble(bare)))
        : Optional.empty();
  }
}
