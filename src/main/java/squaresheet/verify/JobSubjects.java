package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.binding.BoundJob;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.formula.Value;
import squaresheet.roof.Roof;
import squaresheet.sheet.Address;
import squaresheet.takeoff.Names;
import squaresheet.takeoff.Rulebook;
import squaresheet.takeoff.Takeoff;

/** Builds the model of a job workbook from its typed cells, with what is said on the way. */
final class JobSubjects {

  private final Book book;
  private final List<Finding> findings = new ArrayList<>();
  private String name = "";

  JobSubjects(Book book) {
    this.book = book;
  }

  /** What was said while the model was built, at cells where the item is bound. */
  List<Finding> findings() {
    return findings;
  }

  /** What the job is called; empty where nobody says. */
  String name() {
    return name;
  }

  Optional<Model> model(Rulebook rulebook) {
    Optional<BoundJob> job = heard(JobWorkbook.read(book.workbook(), book.file(), rulebook));
    name = job.map(it -> it.labels().getOrDefault("job_name", "")).orElse("");
    return job.flatMap(it -> model(it, rulebook));
  }

  private Optional<Model> model(BoundJob job, Rulebook rulebook) {
    int before = findings.size();
    Optional<Model> model = heard(Roof.resolve(job.roof()))
        .flatMap(roof -> takeoff(job, rulebook, roof))
        .map(it -> new Model(book, job, it));
    List<Finding> placed = findings.subList(before, findings.size()).stream()
        .map(finding -> finding.at(job.cells().place(finding.where(), book.file())))
        .toList();
    findings.subList(before, findings.size()).clear();
    findings.addAll(placed);
    return model;
  }

  private Optional<Takeoff> takeoff(BoundJob job, Rulebook rulebook, Roof roof) {
    Names names = Names.of(roof).with(job.settings());
    Names known = job.cells()
        .cell(new Where.OfItem("job", "simulated_waste"))
        .map(this::number)
        .filter(Optional::isPresent)
        .map(waste -> names.with("simulated_waste", waste.get()))
        .orElse(names);
    return heard(Takeoff.of(rulebook, known, job.selection()));
  }

  private Optional<Double> number(Address cell) {
    return book.value(cell) instanceof Value.Number number
        ? Optional.of(number.value())
        : Optional.empty();
  }

  private <T> Optional<T> heard(Read<T> read) {
    findings.addAll(read.findings());
    return read.value();
  }
}
