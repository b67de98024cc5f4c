package squaresheet.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import squaresheet.binding.AnyLayout;
import squaresheet.binding.Filled;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.job.JobResult;
import squaresheet.sheet.Workbook;
import squaresheet.verify.JobPapers;

/** Writes a job into the cells of a workbook of the estimator's own layout. */
@Command(
    name = "fill",
    description =
        "Write a measured job into the cells of a workbook of your own layout: planes, edges, openings, settings,"
            + " prices and orders, in the units and words of its columns. Formulas are left alone, and every cell"
            + " that changes is listed. The workbook itself is only changed with --force, and then a copy is kept.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Example: squaresheet fill bid.xlsx --from tape-sheet.csv --company our-company -o bid-filled.xlsx"
    })
final class FillCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "WORKBOOK", description = "The workbook of your own layout.")
  private Path file;

  @Option(
      names = "--from",
      required = true,
      paramLabel = "JOB",
      description =
          "What is written into it: a filled field sheet (.csv, .xlsx) or a job workbook.")
  private Path from;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description =
          "The workbook to write; beside the other, with the ending .filled.xlsx, unless given.")
  private Path output;

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet whose planes are meant, where several sheets have planes.")
  private String sheet = "";

  @Option(
      names = "--layout",
      description =
          "Also add a sheet with the course lines and marks of every plane; written anew where it is there.")
  private boolean lines;

  @Mixin
  private FieldOption field;

  @Mixin
  private ForceOption force;

  FillCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Path to = Derived.of(file, output, "filled");
    Workbook workbook = Books.read(file).value().orElseThrow();
    if (JobWorkbook.isOne(workbook)) {
      throw new CannotBeDone(
          Exit.WRONG_USE,
          Books.name(file) + " is a job workbook of our own layout; import writes those");
    }
    AnyLayout layout = AnyLayout.of(workbook, Books.name(file));
    Filled filled = lines ? layout.fillWithLayout(job(), sheet) : layout.fill(job(), sheet);
    console.say(filled.findings());
    return finish(filled, to).code();
  }

  private Exit finish(Filled filled, Path to) {
    boolean refused = filled.findings().stream().anyMatch(Finding::isError);
    if (refused || filled.edits().isEmpty()) {
      console.say(
          refused ? "nothing was written" : "there is nothing to change; nothing was written");
      return refused ? Exit.FAILED : Exit.FINE;
    }
    filled.changes().forEach(change -> console.say(change.toString()));
    force.saving(console).edited(file, filled.edits(), to);
    boolean doubts = filled.findings().stream()
        .anyMatch(finding -> finding.info().severity() == Severity.WARNING);
    console.say(filled.changes().size() + " cells changed"
        + (doubts
            ? "; mind what is said above"
            : ", and every formula makes what the model makes"));
    return doubts ? Exit.WITHHELD : Exit.FINE;
  }

  /** The job of a job workbook, or that of a field sheet with what the company brings to it. */
  private JobResult job() {
    return !TextFile.isOne(from) && JobWorkbook.isOne(Books.read(from).value().orElseThrow())
        ? passed()
        : measured();
  }

  /** The job of a job workbook, which goes no further unless it passes and orders what its takeoff makes. */
  private JobResult passed() {
    Read<Workbook> read = Books.read(from);
    JobPapers papers = JobBook.papers(from, read.value().orElseThrow(), field.rulebook(console));
    console.say(papers.findings());
    if (papers.isWithheld() || !Books.isWhole(read)) {
      throw new CannotBeDone(
          Exit.WITHHELD, Books.name(from) + " does not pass the verify check; nothing was written");
    }
    if (!papers.order().equals(Optional.of(papers.job().orderList()))) {
      throw new CannotBeDone(
          Exit.WITHHELD,
          Books.name(from)
              + " orders other packs than its planes and settings make, and those cannot be filled in;"
              + " nothing was written");
    }
    return papers.job();
  }

  private JobResult measured() {
    Measured measured = field.measured(from);
    console.say(measured.findings());
    JobResult job = measured
        .job()
        .orElseThrow(() -> new CannotBeDone(
            Exit.FAILED, "nothing on " + from + " makes a roof; nothing was written"));
    if (!job.missing().isEmpty()) {
      JobSummary.notRead(job.input().unread()).forEach(console::say);
      throw new CannotBeDone(
          Exit.WITHHELD,
          job.missing()
              + "; mend the tape sheet, or import it, answer there and fill from the job workbook;"
              + " nothing was written");
    }
    return job;
  }
}
