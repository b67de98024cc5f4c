package squaresheet.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import squaresheet.binding.FieldNotes;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.job.Company;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;

/** Turns a filled field sheet into a job workbook. */
@Command(
    name = "import",
    description =
        "Turn a filled field sheet (.csv or .xlsx) into a job workbook with live formulas.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Example: squaresheet import tape-sheet.csv --company our-company -o alder-lane.xlsx"
    })
final class ImportCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "SHEET", description = "The filled field sheet.")
  private Path sheet;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description =
          "The job workbook to write; beside the sheet, with the ending .job.xlsx, unless given.")
  private Path output;

  @Option(
      names = "--company",
      paramLabel = "FOLDER",
      description =
          "The folder with products, prices, rates, terms and, if you have rules of your own, a rulebook, each as .csv"
              + " or .xlsx; the sheet's own folder unless given.")
  private Path company;

  @Option(
      names = "--locale",
      paramLabel = "TAG",
      description =
          "How numbers are written on the sheet, such as en-US or de-DE (decimal comma); en-US unless given.")
  private String locale = "en-US";

  @Mixin
  private PaperOption paper;

  @Mixin
  private ForceOption force;

  ImportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    List<Finding> findings = new ArrayList<>();
    Read<Company> brought = CompanyFolder.read(folder());
    findings.addAll(brought.findings());
    Read<FieldNotes> notes = FieldFile.read(sheet, Locale.forLanguageTag(locale));
    findings.addAll(notes.findings());
    Optional<JobResult> job = Optional.empty();
    if (notes.value().isPresent()) {
      Read<JobInput> input =
          notes.value().get().job(brought.value().orElseThrow(), Locale.forLanguageTag(locale));
      findings.addAll(input.findings());
      Read<JobResult> result = input.value().map(JobResult::of).orElseThrow();
      findings.addAll(result.findings());
      job = result.value();
    }
    console.say(findings);
    return finish(notes, job, findings).code();
  }

  private Exit finish(Read<FieldNotes> notes, Optional<JobResult> job, List<Finding> findings) {
    if (job.isEmpty()) {
      console.complain("no workbook was written: nothing on " + sheet + " makes a roof");
      return Exit.FAILED;
    }
    force
        .saving(console)
        .workbook(
            JobWorkbook.write(job.get().input(), job.get(), notes.value().orElseThrow())
                .on(paper.size()),
            target());
    long unread = notes.value().map(field -> field.unread().size()).orElse(0);
    JobSummary.of(job.get(), unread).forEach(console::say);
    return findings.stream().anyMatch(Finding::isError) ? Exit.WITHHELD : Exit.FINE;
  }

  private Path folder() {
    Path beside = sheet.toAbsolutePath().getParent();
    return company == null ? beside : company;
  }

  private Path target() {
    String name = sheet.getFileName().toString().replaceFirst("\\.[^.]+$", "");
    return output == null ? sheet.resolveSibling(name + ".job.xlsx") : output;
  }
}
