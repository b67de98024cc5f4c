package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import squaresheet.binding.BoundJob;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.job.JobResult;
import squaresheet.takeoff.Rulebook;

/** Builds the model of a job workbook from its typed cells, with what is said on the way. */
final class JobSubjects {

  private static final Set<String> ADVICE = Set.of("limit-in-doubt", "limit-to-note");

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
    name = job.map(it -> it.input().card().name()).orElse("");
    return job.flatMap(this::model);
  }

  private Optional<Model> model(BoundJob job) {
    Read<JobResult> result = JobResult.of(job.input());
    result.findings().stream()
        .map(finding -> finding.at(job.cells().place(finding.where(), book.file())))
        .filter(JobSubjects::isOfTheWorkbook)
        .forEach(findings::add);
    return result.value().map(it -> new Model(book, job, it));
  }

  /** Advice on the roof and its layout is given when a job is worked out; here only what makes the workbook wrong counts. */
  private static boolean isOfTheWorkbook(Finding finding) {
    boolean placed = finding.where() instanceof Where.InCell;
    return finding.isError() || (placed && !ADVICE.contains(finding.info().id()));
  }

  private <T> Optional<T> heard(Read<T> read) {
    findings.addAll(read.findings());
    return read.value();
  }
}
