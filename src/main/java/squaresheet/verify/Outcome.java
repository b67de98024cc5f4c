package squaresheet.verify;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** What a workbook comes to, before a change of it and after: its price, or else every result that no formula reads. */
final class Outcome {

  /** A change of the total by more than this is made by a person only. */
  private static final double MUCH = 0.25;

  /** Changes that work on each other move the total by so much more than each by itself. */
  private static final double TOGETHER = 1.25;

  private static final double HALF_CENT = 0.005;

  private final List<Address> cells;
  private final Book original;

  Outcome(Book original) {
    this.original = original;
    cells = ends(original);
  }

  private static List<Address> ends(Book book) {
    Optional<Address> price = book.named("estimate_total")
        .map(Cells::first)
        .or(() -> BookModel.of(book).flatMap(model -> model.cell("job", "price_total")));
    return price.map(List::of).orElseGet(() -> book.formulas().keySet().stream()
        .filter(cell -> !book.links().isRead(cell))
        .filter(cell -> !(book.value(cell) instanceof Value.Text))
        .toList());
  }

  /** What another state of the workbook comes to. */
  private static OptionalDouble in(Book book, Address cell) {
    return book.number(cell);
  }

  /** What these values alone would do to the total, in words, where that is much. */
  Optional<String> much(Book book, Map<Address, Value> put) {
    Reckoning then = book.reckoning().putting(put);
    return cells.stream()
        .flatMap(cell -> much(cell, in(book, cell), Shown.number(then.value(cell))).stream())
        .findFirst();
  }

  /** What all changes together did to the total, in words, where that is much. */
  Optional<String> much(Book after) {
    return cells.stream()
        .flatMap(cell -> much(cell, in(original, cell), in(after, cell)).stream())
        .findFirst();
  }

  private Optional<String> much(Address cell, OptionalDouble now, OptionalDouble then) {
    String label = original.tab(cell.sheet()).label(cell.ref());
    String name = label.isEmpty() ? cell.toString() : "'" + label + "' (" + cell + ")";
    if (now.isEmpty() || then.isEmpty()) {
      return now.isEmpty() && then.isEmpty()
          ? Optional.empty()
          : Optional.of("what it makes of " + name + " cannot be told");
    }
    double more = Math.abs(then.getAsDouble() - now.getAsDouble());
    return more > Math.max(MUCH * Math.abs(now.getAsDouble()), HALF_CENT)
        ? Optional.of(name + " would be " + Shown.number(then.getAsDouble()) + " instead of "
            + Shown.number(now.getAsDouble()))
        : Optional.empty();
  }

  /** Whether the total is moved at all by these values. */
  boolean isMoved(Book book, Map<Address, Value> put) {
    Reckoning then = book.reckoning().putting(put);
    return cells.stream().anyMatch(cell -> moved(book, then, cell) > HALF_CENT);
  }

  private static double moved(Book book, Reckoning then, Address cell) {
    double now = in(book, cell).orElse(0);
    return Math.abs(Shown.number(then.value(cell)).orElse(0) - now);
  }

  /** Whether the total moved by no more than these changes would move it each by itself. */
  boolean isExplained(Book before, Book after, List<Map<Address, Value>> changes) {
    return cells.stream().allMatch(cell -> {
      double each = changes.stream()
          .mapToDouble(put -> moved(before, before.reckoning().putting(put), cell))
          .sum();
      double all = Math.abs(in(after, cell).orElse(0) - in(before, cell).orElse(0));
      return all <= (changes.size() == 1 ? each : TOGETHER * each) + 2 * HALF_CENT;
    });
  }
}
