package squaresheet.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.verify.Corrections;
import squaresheet.verify.Verify;

/** Puts right in a copy what the verify pass finds wrong, as far as that is sure. */
@Command(
    name = "correct",
    description =
        "Put the wrong cells that verify finds right in a copy: the formula of the other rows where a number was"
            + " typed over it, the number that should be typed. Every change is listed; what is in doubt is left"
            + " alone. The workbook itself stays as it is.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet correct alder-lane.job.xlsx -o alder-lane.corrected.xlsx"})
final class CorrectCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "WORKBOOK", description = "The workbook; a copy of it is corrected.")
  private Path file;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description =
          "The corrected copy; beside the workbook, with the ending .corrected.xlsx, unless given.")
  private Path output;

  @Mixin
  private CompanyOption company;

  @Mixin
  private ForceOption force;

  CorrectCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Workbook workbook = Books.read(file).value().orElseThrow();
    Rulebook rulebook = company.rulebook(console);
    Corrections corrections =
        Corrections.of(workbook, rulebook, book -> Verify.of(book, Books.name(file), rulebook));
    corrections.changes().forEach(change -> console.say(change.toString()));
    if (corrections.edits().isEmpty()) {
      console.say("there is nothing that can be put right for sure; nothing was written");
      return (corrections.verdict().isPassed() ? Exit.FINE : Exit.WITHHELD).code();
    }
    force.saving(console).edited(file, corrections.edits(), Derived.of(file, output, "corrected"));
    int left = corrections.verdict().findings().size();
    console.say(corrections.changes().size()
        + (corrections.changes().size() == 1 ? " cell" : " cells")
        + " put right; every formula shows its new value"
        + (left == 0 ? "" : "; " + left + " left to a person:"));
    console.say(corrections.verdict().findings());
    return (corrections.verdict().isPassed() ? Exit.FINE : Exit.WITHHELD).code();
  }
}
