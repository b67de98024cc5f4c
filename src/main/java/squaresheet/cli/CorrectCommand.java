package squaresheet.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.verify.Corrections;
import squaresheet.verify.Verdict;
import squaresheet.verify.Verify;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Saved;
import squaresheet.xlsx.Xlsx;

/** Puts right in a copy what the verify pass finds wrong, as far as that is sure. */
@Command(
    name = "correct",
    description =
        "Put the wrong cells that verify finds right in a copy, where two sources agree on what they should hold: the"
            + " formula where a number was typed over it, say. Every change is listed. What is in doubt, or changes the"
            + " total by more than a quarter, is proposed and left alone. The workbook itself stays as it is.",
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

  @Option(
      names = "--take",
      paramLabel = "CELL",
      description =
          "Make the change that is proposed for this cell, such as Bid!E7, or for these, Bid!E7:E9; may be given again.")
  private List<String> take = new ArrayList<>();

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
    TakenCells taken = TakenCells.parse(take, workbook);
    Rulebook rulebook = company.rulebook(console);
    Corrections corrections =
        Corrections.of(workbook, book -> Verify.of(book, Books.name(file), rulebook), taken);
    taken.requireProposed(corrections);
    corrections.changes().forEach(change -> console.say(change.toString()));
    if (corrections.edits().isEmpty()) {
      console.say("there is nothing that can be put right for sure; nothing was written");
    } else {
      tryOut(corrections, rulebook);
      force
          .saving(console)
          .edited(file, corrections.edits(), Derived.of(file, output, "corrected"));
    }
    sayWhatIsLeft(corrections);
    return (corrections.verdict().isPassed() ? Exit.FINE : Exit.WITHHELD).code();
  }

  /** Writes the copy somewhere else, reads it and verifies it: what it would say that is new must not leave here. */
  private void tryOut(Corrections corrections, Rulebook rulebook) {
    List<Finding> told;
    try {
      Path folder = Files.createTempDirectory("squaresheet");
      Path copy = folder.resolve(Books.name(file));
      try {
        told = corrections.isNewIn(written(corrections, copy, rulebook));
      } finally {
        Files.deleteIfExists(copy);
        Files.delete(folder);
      }
    } catch (IOException unwritable) {
      throw new CannotBeDone(
          Exit.FAILED,
          "the changes could not be tried out, because the folder for temporary files cannot be written");
    }
    if (!told.isEmpty()) {
      console.say(told);
      throw new CannotBeDone(
          Exit.FAILED,
          "with these changes written, verify says something new; nothing was written");
    }
  }

  private Verdict written(Corrections corrections, Path copy, Rulebook rulebook) {
    Read<Saved> saved = Xlsx.edit(file, corrections.edits(), copy, Existing.REFUSE);
    if (saved.value().isEmpty()) {
      throw new CannotBeDone(Exit.FAILED, saved.findings().get(0).says());
    }
    return Verify.of(Books.read(copy).value().orElseThrow(), Books.name(file), rulebook);
  }

  private void sayWhatIsLeft(Corrections corrections) {
    List<Corrections.Left> left =
        corrections.left().stream().filter(Corrections.Left::isNeeded).toList();
    int made = corrections.changes().size();
    if (made > 0) {
      console.say(made + (made == 1 ? " cell" : " cells") + " put right"
          + (left.isEmpty() ? "" : ", " + left.size() + " not")
          + "; every formula shows its new value");
    }
    if (!left.isEmpty()) {
      console.say("not changed; look at each, and make the change with --take and its cell:");
      left.forEach(it -> console.say("  " + it));
    }
    List<Finding> findings = corrections.verdict().findings();
    if (!findings.isEmpty()) {
      console.say(findings.size() + (findings.size() == 1 ? " finding" : " findings")
          + " left to a person:");
      console.say(findings);
    }
  }
}
