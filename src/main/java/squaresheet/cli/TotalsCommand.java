package squaresheet.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import squaresheet.finding.Read;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.verify.JobTotal;
import squaresheet.verify.Totals;
import squaresheet.verify.Verdict;
import squaresheet.xlsx.Xlsx;

/** Totals for the accountant, from verified workbooks only. */
@Command(
    name = "totals",
    description =
        "Verify job workbooks and give the amounts of those that pass, by category and cost code, as csv."
            + " Those that do not pass are listed apart with their reasons, never mixed in.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet totals jobs/*.xlsx -o totals.csv"})
final class TotalsCommand implements Callable<Integer> {

  private final Console console;
  private final List<Verdict> verdicts = new ArrayList<>();

  @Parameters(paramLabel = "WORKBOOK", arity = "1..*", description = "The job workbooks.")
  private List<Path> files;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description =
          "The csv to write; what is withheld goes beside it, with -withheld in its name. Printed unless given.")
  private Path output;

  @Mixin
  private ForceOption force;

  @Mixin
  private CompanyOption company;

  TotalsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Rulebook rulebook = company.rulebook(console);
    boolean unread = false;
    for (Path file : Workload.of(files, console)) {
      unread |= !verify(file, rulebook);
    }
    Totals totals = Totals.of(verdicts);
    give(totals);
    totals
        .sums()
        .forEach((currency, sum) -> console.say("total of " + totals.jobs().size()
            + (totals.jobs().size() == 1 ? " job: " : " jobs: ") + sum.show()));
    totals.jobs().forEach(this::own);
    totals.withheld().forEach(verdict -> console.say("withheld: " + verdict.file()));
    Exit exit = totals.withheld().isEmpty() ? Exit.FINE : Exit.WITHHELD;
    return exit.and(unread ? Exit.FAILED : Exit.FINE).code();
  }

  private void own(JobTotal job) {
    job.byOwnCategory().forEach((word, money) -> {
      if (!word.equals(JobTotal.NOT_SPLIT)) {
        console.say(
            job.file() + ": " + money.show() + " are in a category of your own, '" + word + "'");
      }
    });
  }

  private boolean verify(Path file, Rulebook rulebook) {
    Read<Workbook> read = Xlsx.read(file);
    if (!Books.isWhole(read)) {
      console.say(read.findings());
      return false;
    }
    verdicts.add(Passes.over(read.value().orElseThrow(), Books.name(file), rulebook));
    return true;
  }

  private void give(Totals totals) {
    if (output == null) {
      console.say(totals.csv().stripTrailing());
      if (!totals.withheld().isEmpty()) {
        console.say(totals.withheldCsv().stripTrailing());
      }
      return;
    }
    Saving saving = force.saving(console);
    saving.text(totals.csv(), output);
    if (!totals.withheld().isEmpty()) {
      saving.text(totals.withheldCsv(), withheldFile());
    }
  }

  private Path withheldFile() {
    String name = Books.name(output);
    int dot = name.lastIndexOf('.');
    return output.resolveSibling(
        dot < 0 ? name + "-withheld" : name.substring(0, dot) + "-withheld" + name.substring(dot));
  }
}
