package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import squaresheet.binding.BoundJob;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.job.JobResult;
import squaresheet.takeoff.Rulebook;

/** Builds the model of a job workbook from its typed cells, with what is said on the way. */
final class JobSubjects {

  private static final String NOTED = "limit-to-note";

  private static final Set<String> ADVICE =
      Set.of("limit-in-doubt", NOTED, "pitch-under-product-minimum");

  private final Book book;
  private final List<Finding> findings = new ArrayList<>();
  private JobIdentity identity;

  JobSubjects(Book book) {
    this.book = book;
    identity = JobIdentity.of("", "", book.file());
  }

  /** What was said while the model was built, at cells where the item is bound. */
  List<Finding> findings() {
    return findings;
  }

  /** What tells the job from others. */
  JobIdentity identity() {
    return identity;
  }

  Optional<Model> model(Rulebook rulebook) {
    Optional<BoundJob> job = heard(JobWorkbook.read(book.workbook(), book.file(), rulebook));
    job.map(it -> it.input().card())
        .ifPresent(card -> identity = JobIdentity.of(card.name(), card.number(), book.file()));
    return job.flatMap(this::model);
  }

  private Optional<Model> model(BoundJob job) {
    Read<JobResult> result = JobResult.of(job.input());
    result.findings().stream()
        .map(finding -> finding.at(job.cells().place(finding.where(), book.file())))
        .map(new ListedItems(book)::placed)
        .flatMap(JobSubjects::counts)
        .forEach(findings::add);
    return result.value().map(it -> new Model(book, job, it));
  }

  /**
   * What makes the workbook wrong counts as it is. What the roof, the code or the product asks people to look at is no
   * mistake of the workbook, and is kept as a note. Advice that only makes the layout handsomer is given when the job is
   * worked out.
   */
  private static Stream<Finding> counts(Finding finding) {
    boolean placed = finding.where() instanceof Where.InCell;
    boolean wrong =
        finding.isError() || (placed && !ADVICE.contains(finding.info().id()));
    boolean note =
        finding.info().severity() == Severity.NOTE && !finding.info().id().equals(NOTED);
    return wrong ? Stream.of(finding) : note ? Stream.empty() : Stream.of(asNote(finding));
  }

  private static Finding asNote(Finding advice) {
    CheckInfo note =
        new CheckInfo(advice.info().id(), Severity.NOTE, advice.info().title());
    return new Finding(
        note, advice.where(), advice.found(), advice.expected(), advice.says(), advice.worth());
  }

  private <T> Optional<T> heard(Read<T> read) {
    findings.addAll(read.findings());
    return read.value();
  }
}
