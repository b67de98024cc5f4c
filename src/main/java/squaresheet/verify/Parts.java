package squaresheet.verify;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import squaresheet.sheet.Address;

/** The cells of a column that are added up, with what they should hold and what they hold. */
final class Parts {

  private final BookModel model;
  private final String property;
  private final List<Double> should = new ArrayList<>();
  private final List<Double> there = new ArrayList<>();
  private final Set<Address> cells = new LinkedHashSet<>();

  Parts(BookModel model, String property) {
    this.model = model;
    this.property = property;
  }

  void add(String subject) {
    model.cell(subject, property).ifPresent(cells::add);
    OptionalDouble wanted = model.plain(subject, property);
    wanted.ifPresent(it -> {
      should.add(it);
      there.add(model.plainAsItStands(subject, property).orElse(it));
    });
  }

  boolean isEmpty() {
    return should.isEmpty();
  }

  Set<Address> cells() {
    return cells;
  }

  /** The sum of what should be there, and of what is there: a sum of wrong parts is not wrong itself. */
  List<Double> sums() {
    return isEmpty() ? List.of() : List.of(sum(should), sum(there));
  }

  private static double sum(List<Double> parts) {
    return parts.stream().mapToDouble(it -> it).sum();
  }

  /** The parts and every sum of the same column, which a sum of sums reads. */
  Set<Address> withSums() {
    Set<Address> all = new LinkedHashSet<>(cells);
    model.bound().cells().items().forEach((item, cell) -> {
      if (item.subject().startsWith("all ") && item.property().equals(property)) {
        all.add(cell);
      }
    });
    return all;
  }
}
