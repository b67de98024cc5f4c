package squaresheet.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.verify.Tally;
import squaresheet.verify.Verdict;
import squaresheet.verify.Verify;
import squaresheet.xlsx.Xlsx;

/** Checks all the math of workbooks. */
@Command(
    name = "verify",
    description =
        "Check all the math of one or more workbooks and name every cell that is wrong. Nothing is changed.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet verify alder-lane.job.xlsx"})
final class VerifyCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      paramLabel = "WORKBOOK",
      arity = "1..*",
      description = "The workbooks to check, or folders of them.")
  private List<Path> files;

  @Option(
      names = "--account",
      description = "Also list every check: about how many things it was asked, and spoke.")
  private boolean account;

  @Mixin
  private CompanyOption company;

  VerifyCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Exit exit = Exit.FINE;
    Rulebook rulebook = company.rulebook(console);
    GivenBooks given = GivenBooks.of(files);
    given.leftOut().forEach(line -> console.say("left out: " + line));
    if (given.books().isEmpty()) {
      return Exit.FAILED.code();
    }
    for (Path file : given.books()) {
      Read<Exit> done =
          Guard.over(given.called(file), () -> Read.of(verify(file, given.called(file), rulebook)));
      console.say(done.findings());
      exit = exit.and(done.value().orElse(Exit.FAILED));
    }
    return exit.code();
  }

  private Exit verify(Path file, String name, Rulebook rulebook) {
    Read<Workbook> read = Xlsx.read(file);
    console.say(read.findings());
    if (read.value().isEmpty()) {
      return Exit.FAILED;
    }
    Verdict verdict = Verify.of(read.value().orElseThrow(), name, rulebook);
    console.say(verdict.findings());
    if (account) {
      verdict.tallies().stream().map(Tally::toString).forEach(console::say);
    }
    foreign(verdict);
    boolean passed = verdict.isPassed() && Books.isWhole(read);
    if (passed) {
      console.say(verdict.reasons());
    }
    console.say(line(name, verdict, passed));
    return passed ? Exit.FINE : Exit.WITHHELD;
  }

  /** Of a workbook of foreign layout: how much of it was checked, and what was not. */
  private void foreign(Verdict verdict) {
    List<String> left = verdict.moneyPath().notChecked();
    if (!left.isEmpty()) {
      console.say("Not checked against a model:");
      left.forEach(line -> console.say("  " + line));
    }
    console.say("Checked: " + verdict.moneyPath());
  }

  private static String line(String file, Verdict verdict, boolean passed) {
    long asked = verdict.tallies().stream().filter(Tally::isAsked).count();
    int notes = verdict.findings(Severity.NOTE).size();
    int said = verdict.findings().size() - notes;
    return file + ": " + said + (said == 1 ? " finding" : " findings")
        + (notes == 0 ? "" : notes == 1 ? " and 1 note" : " and " + notes + " notes") + "; " + asked
        + " checks asked, "
        + verdict.notAsked().size() + " had nothing to ask about; totals "
        + (!passed
            ? "withheld"
            : verdict.total().isPresent() ? "can be given" : "not known, no error found");
  }
}
