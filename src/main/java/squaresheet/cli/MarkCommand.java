package squaresheet.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import squaresheet.sheet.Workbook;
import squaresheet.verify.Marks;
import squaresheet.verify.Verdict;
import squaresheet.verify.Verify;

/** Writes what the verify pass finds into a copy of the workbook. */
@Command(
    name = "mark",
    description =
        "Check all the math of a workbook and write what is found into a copy of it: a note at every cell that is"
            + " spoken of, and a sheet that lists them all. Notes of other people stay. Done again, ours are replaced.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet mark alder-lane.job.xlsx -o alder-lane.marked.xlsx"})
final class MarkCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "WORKBOOK", description = "The workbook; a copy of it is marked.")
  private Path file;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description =
          "The marked copy, or the workbook itself with --force; beside it, with the ending .marked.xlsx, unless"
              + " given.")
  private Path output;

  @Mixin
  private CompanyOption company;

  @Mixin
  private ForceOption force;

  MarkCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Workbook workbook = Books.read(file).value().orElseThrow();
    Verdict verdict = Verify.of(workbook, Books.name(file), company.rulebook(console));
    force
        .saving(console)
        .edited(file, Marks.of(workbook, verdict), Derived.of(file, output, "marked"));
    console.say(verdict.findings().size()
        + (verdict.findings().size() == 1 ? " finding" : " findings")
        + " written into the workbook");
    return (verdict.isPassed() ? Exit.FINE : Exit.WITHHELD).code();
  }
}
