package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.takeoff.Rulebook;

/** One run of the checks over a workbook. */
final class Pass {

  private final Book book;
  private final Subjects subjects;
  private final List<Tally> tallies = new ArrayList<>();
  private final List<Finding> said;

  Pass(Book book) {
    this.book = book;
    subjects = Subjects.of(book);
    said = new ArrayList<>(book.unreadable());
    left().ifPresent(said::add);
  }

  /** The formulas of a workbook that is too much to be worked out whole, said once. */
  private Optional<Finding> left() {
    long left = book.left();
    String says = "the formulas look at more cells than are gone through, and "
        + Says.count(left, "formula") + " of " + book.formulas().size()
        + " are not worked out and not checked";
    return left == 0
        ? Optional.empty()
        : Optional.of(new Finding(Ask.CUT_SHORT, new Where.InFile(book.file()), says));
  }

  /** Asks what can be asked of any workbook, and of what is bound of it. */
  Verdict run() {
    Optional<BookModel> bound = BookModel.of(book);
    subjects.put(BoundValue.class, bound.stream().flatMap(BookModel::values));
    subjects.put(EdgeTotal.class, bound.stream().flatMap(it -> it.edges().stream()));
    subjects.put(DoubtedColumn.class, bound.stream().flatMap(it -> it.doubted().stream()));
    Stream.concat(Checks.ofAnyWorkbook().stream(), Checks.ofBoundBooks().stream())
        .forEach(this::ask);
    said.addAll(bound.map(BookModel::stale).orElse(List.of()));
    MoneyPath path = bound
        .map(it -> MoneyPath.of(book, it))
        .orElseGet(() -> MoneyPath.of(book, Optional.empty()));
    Optional<JobTotal> total = bound.flatMap(it -> new BookTotal(it).total(path));
    return verdict(said, Optional.empty(), total, path)
        .asking(total.isPresent() ? List.of() : BookTotal.asked(book));
  }

  /** Asks the model of the job too. */
  Verdict run(Rulebook rulebook) {
    JobSubjects job = new JobSubjects(book);
    Optional<Model> model = job.model(rulebook);
    said.addAll(job.findings());
    Optional<EstimateCells> estimate = EstimateCells.of(book);
    Optional<Priced> priced = estimate.flatMap(Priced::of);
    model.ifPresent(it -> subjects.measured(book, book.units().with(it.job())));
    subjects.put(EstimateCells.class, estimate.stream());
    subjects.put(Priced.class, priced.stream());
    subjects.put(PricedLine.class, estimate.stream().flatMap(it -> it.lines().stream()));
    subjects.put(ModelledLine.class, model.stream().flatMap(it -> estimate.stream()
        .flatMap(cells -> ModelledLine.of(it, cells))));
    subjects.put(EstimateStep.class, model.stream().flatMap(it -> estimate.stream()
        .flatMap(cells -> EstimateStep.of(it, cells).stream())));
    subjects.put(SummaryCell.class, model.stream().flatMap(SummaryCell::of));
    subjects.put(Allowance.class, model.stream().flatMap(Allowance::of));
    subjects.put(Modelled.class, model.stream().flatMap(it -> it.cells().values().stream()));
    int read = said.size();
    Stream.concat(Checks.ofAnyWorkbook().stream(), Checks.ofJobs().stream()).forEach(this::ask);
    model.flatMap(Rewritten::of).ifPresent(it -> said.subList(read, said.size())
        .replaceAll(it::restoring));
    MoneyPath path = MoneyPath.of(book, model);
    List<Finding> left = new LostInputs(
            book, model, job.findings(), LostInputs.consequences(Checks.ofJobs()))
        .fold(said);
    return verdict(left, model, priced.map(it -> JobTotal.of(job.identity(), it, path)), path);
  }

  private void ask(Ask<?> ask) {
    book.looks().again();
    Ask.Answer answer = ask.ask(subjects, book.file());
    book.looks().free();
    tallies.add(answer.tally());
    said.addAll(answer.findings());
  }

  private Verdict verdict(
      List<Finding> told, Optional<Model> model, Optional<JobTotal> total, MoneyPath path) {
    Worth worth = new Worth(book, model);
    List<Finding> folded = new Folding(book, model).fold(told);
    book.looks().again();
    List<Finding> kept = folded.stream().map(worth::of).toList();
    book.looks().free();
    return new Verdict(book.file(), kept, said, tallies, path, total);
  }
}
