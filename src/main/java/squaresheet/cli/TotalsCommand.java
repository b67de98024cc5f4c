package squaresheet.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
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
import squaresheet.verify.Verify;
import squaresheet.verify.Withheld;
import squaresheet.xlsx.Xlsx;

/** Totals for the accountant, from verified workbooks only. */
@Command(
    name = "totals",
    description =
        "Verify job workbooks and give the amounts of those that pass, by category and cost code, as csv."
            + " Those that do not pass are listed apart with their reasons, never mixed in. Copies that this program"
            + " kept, marked or corrected of a workbook beside them are left out.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet totals jobs/*.xlsx -o totals.csv"})
final class TotalsCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      paramLabel = "WORKBOOK",
      arity = "1..*",
      description = "The job workbooks, or folders of them.")
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
    if (output != null) {
      Ending.must(output, ".csv");
    }
    Rulebook rulebook = company.rulebook(console);
    GivenBooks given = GivenBooks.withoutCopies(files);
    given.leftOut().forEach(line -> console.say("left out: " + line));
    SameFiles same = new SameFiles(given);
    List<Verdict> verdicts = new ArrayList<>();
    List<Withheld> unread = new ArrayList<>();
    for (Path file : Workload.of(same.taken(), console)) {
      String name = given.called(file);
      Read<Verdict> read = Guard.over(name, () -> verify(file, name, rulebook));
      read.value()
          .ifPresentOrElse(verdicts::add, () -> unread.add(new Withheld(name, read.findings())));
    }
    Totals totals = Totals.of(
        verdicts, Stream.of(unread, same.again()).flatMap(List::stream).toList());
    give(totals);
    say(totals);
    return exit(totals, !unread.isEmpty()).code();
  }

  private static Read<Verdict> verify(Path file, String name, Rulebook rulebook) {
    Read<Workbook> read = Xlsx.read(file);
    return Books.isWhole(read)
        ? read.map(workbook -> Verify.of(workbook, name, rulebook))
        : Read.nothing(read.findings());
  }

  private void say(Totals totals) {
    totals
        .sums()
        .forEach((currency, sum) -> console.say("total of " + totals.jobs().size()
            + (totals.jobs().size() == 1 ? " job: " : " jobs: ") + sum.show()));
    if (totals.jobs().isEmpty() && totals.withheld().isEmpty()) {
      console.say("no workbook is left to add up");
    }
    totals.jobs().forEach(this::own);
    totals
        .withheld()
        .forEach(each -> console.say(
            "withheld: " + each.file() + ": " + each.reasons().get(0).says()));
  }

  private void own(JobTotal job) {
    job.byOwnCategory().forEach((word, money) -> {
      if (!word.equals(JobTotal.NOT_SPLIT)) {
        console.say(
            job.file() + ": " + money.show() + " are in a category of your own, '" + word + "'");
      }
    });
  }

  private Exit exit(Totals totals, boolean unread) {
    boolean whole = totals.withheld().isEmpty() && !totals.jobs().isEmpty();
    return (whole ? Exit.FINE : Exit.WITHHELD).and(unread ? Exit.FAILED : Exit.FINE);
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
    boolean list = !totals.withheld().isEmpty() || Files.exists(withheldFile());
    saving.refuse(list ? List.of(output, withheldFile()) : List.of(output));
    if (list) {
      saving.text(totals.withheldCsv(), withheldFile());
    }
    saving.text(totals.csv(), output);
  }

  private Path withheldFile() {
    String name = Books.name(output);
    int dot = name.lastIndexOf('.');
    return output.resolveSibling(
        dot < 0 ? name + "-withheld" : name.substring(0, dot) + "-withheld" + name.substring(dot));
  }
}
