package squaresheet.verify;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import squaresheet.binding.BoundJob;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Where;
import squaresheet.formula.Value;
import squaresheet.job.JobResult;
import squaresheet.sheet.Address;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Takeoff;

/** What the cells of a bound workbook should hold, by the model that was built from its typed cells. */
final class Model {

  private final Book book;
  private final BoundJob job;
  private final JobResult result;
  private final Takeoff takeoff;
  private final Map<Address, Modelled> cells = new LinkedHashMap<>();
  private final Reckoning asModelled;
  private Optional<Book> written = Optional.empty();

  Model(Book book, BoundJob job, JobResult result) {
    this.book = book;
    this.job = job;
    this.result = result;
    takeoff = result.takeoff();
    Map<Address, BoundJob.BoundRule> rules = job.rules().stream()
        .collect(Collectors.toMap(BoundJob.BoundRule::cell, rule -> rule, (one, other) -> one));
    job.cells().items().forEach((item, cell) -> modelled(
            item, cell, Optional.ofNullable(rules.get(cell)))
        .ifPresent(it -> cells.putIfAbsent(cell, it)));
    Map<Address, Value> should = new LinkedHashMap<>();
    cells.forEach((cell, it) -> should.put(cell, it.should()));
    asModelled = book.reckoning().putting(should);
  }

  private Optional<Modelled> modelled(
      Where.OfItem item, Address cell, Optional<BoundJob.BoundRule> bound) {
    Optional<Rule> rule = takeoff.rulebook().rule(item.property());
    if (rule.isEmpty() || rule.get().kind() == Rule.Kind.SETTING) {
      return Optional.empty();
    }
    return row(item, rule.get())
        .map(row -> new Modelled(this, cell, item, rule.get(), row, bound))
        .filter(it -> it.should().isChecked() && !(it.should() instanceof Value.Fault));
  }

  /** The row of the takeoff that the item is; -1 for the sum of all rows. */
  private Optional<Integer> row(Where.OfItem item, Rule rule) {
    if (item.subject().startsWith("all ")) {
      return Optional.of(-1);
    }
    if (rule.per() == Rule.Per.JOB) {
      return item.subject().equals("job") ? Optional.of(0) : Optional.empty();
    }
    String prefix = rule.per() + " ";
    List<Value> names = takeoff.values(rule.per() + "_name");
    int row = item.subject().startsWith(prefix)
        ? names.indexOf(new Value.Text(item.subject().substring(prefix.length())))
        : -1;
    return row < 0 ? Optional.empty() : Optional.of(row);
  }

  Book book() {
    return book;
  }

  BoundJob job() {
    return job;
  }

  JobResult result() {
    return result;
  }

  Takeoff takeoff() {
    return takeoff;
  }

  /** The cells that the model knows the value of. */
  Map<Address, Modelled> cells() {
    return cells;
  }

  /** The workbook as it is written anew from the model; none where the job cannot be written. */
  Optional<Book> written() {
    if (written.isEmpty()) {
      try {
        written = Optional.of(
            Book.of(book.file(), JobWorkbook.write(job.input(), result).workbook()));
      } catch (IllegalArgumentException jobThatCannotBeWritten) {
        return Optional.empty();
      }
    }
    return written;
  }

  /** The workbook with every modelled cell as it should be: what a formula makes here is its own doing. */
  Reckoning asModelled() {
    return asModelled;
  }
}
