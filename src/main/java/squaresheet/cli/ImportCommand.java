package squaresheet.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import squaresheet.binding.FieldNotes;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Finding;
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

  @Mixin
  private FieldOption field;

  @Mixin
  private PaperOption paper;

  @Mixin
  private ForceOption force;

  ImportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Ending.must(target(), ".xlsx");
    Measured measured = field.measured(sheet);
    console.say(measured.findings());
    return finish(measured).code();
  }

  private Exit finish(Measured measured) {
    if (measured.job().isEmpty()) {
      measured.notes().ifPresent(this::kept);
      console.complain("no workbook was written: nothing on " + sheet + " makes a roof");
      return Exit.FAILED;
    }
    JobResult job = measured.job().get();
    FieldNotes notes = measured.notes().orElseThrow();
    force
        .saving(console)
        .workbook(JobWorkbook.write(job.input(), job, notes).on(paper.size()), target());
    JobSummary.of(job).forEach(console::say);
    boolean withheld =
        !job.missing().isEmpty() || measured.findings().stream().anyMatch(Finding::isError);
    return withheld ? Exit.WITHHELD : Exit.FINE;
  }

  /** What would have been kept in the workbook, where there is none to keep it in. */
  private void kept(FieldNotes notes) {
    notes
        .remarks()
        .forEach(remark ->
            console.say("  " + remark.where() + ": " + remark.about() + ": " + remark.text()));
    JobSummary.notRead(notes.unread()).forEach(console::say);
  }

  private Path target() {
    String name = sheet.getFileName().toString().replaceFirst("\\.[^.]+$", "");
    return output == null ? sheet.resolveSibling(name + ".job.xlsx") : output;
  }
}
