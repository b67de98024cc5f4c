package squaresheet.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import squaresheet.binding.AnyLayout;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.sheet.Workbook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Saved;
import squaresheet.xlsx.Xlsx;

/** Binds a workbook of the estimator's own layout, shows how, and keeps the binding in it. */
@Command(
    name = "bind",
    description =
        "Tell which cells of a workbook of your own layout are planes, lengths, prices and totals, so that verify"
            + " can check them. Nothing is changed without --keep.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet bind birch-court.xlsx --keep"})
final class BindCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "WORKBOOK", description = "The workbook.")
  private Path file;

  @Option(
      names = "--mapping",
      paramLabel = "FILE",
      description = "A filled-in list that says what cells are; it goes before every guess.")
  private Path mapping;

  @Option(
      names = "--fill-in",
      paramLabel = "FILE",
      description = "Write the list of what is bound and what is not sure, to fill in.")
  private Path fillIn;

  @Option(
      names = "--keep",
      description = "Keep the binding in the workbook; a copy of it as it was is kept beside it.")
  private boolean keep;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "With --keep: write here instead, and leave the workbook as it is.")
  private Path output;

  @Option(names = "--afresh", description = "Forget the binding that is kept in the workbook.")
  private boolean afresh;

  @Option(
      names = "--no-questions",
      description = "Ask nothing; without a terminal nothing is asked anyway.")
  private boolean silent;

  @Option(
      names = "--force",
      description =
          "With --fill-in or --output: write even where a file is there already; a copy of it is kept.")
  private boolean force;

  BindCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Ending.like(file, output == null ? file : output);
    if (fillIn != null) {
      Ending.must(fillIn, ".csv");
    }
    Workbook workbook = Books.read(file).value().orElseThrow();
    if (JobWorkbook.isOne(workbook)) {
      console.say(Books.name(file) + " is a job workbook of our own layout; it is bound by itself");
      return Exit.FINE.code();
    }
    Read<AnyLayout> told = told(workbook);
    console.say(told.findings());
    boolean mayAsk = !silent && console.mayAsk();
    AnyLayout guessed = told.value().orElseThrow();
    AnyLayout layout = mayAsk ? guessed.asking(new Questions(console)) : guessed;
    new BindingReport(console, workbook).say(layout);
    if (fillIn != null) {
      new Saving(console, force).text(layout.mapping(), fillIn);
    }
    if (told.findings().stream().anyMatch(Finding::isError)) {
      console.complain("nothing is kept: the list of cells must be read whole, but is not");
      return Exit.FAILED.code();
    }
    return finish(layout, keep || (mayAsk && wantsIt())).code();
  }

  private Read<AnyLayout> told(Workbook workbook) {
    String name = Books.name(file);
    AnyLayout guessed = afresh ? AnyLayout.survey(workbook, name) : AnyLayout.of(workbook, name);
    return mapping == null
        ? Read.of(guessed)
        : guessed.mapped(TextFile.read(mapping), Books.name(mapping));
  }

  private boolean wantsIt() {
    Optional<String> answer =
        console.ask("Keep this in the workbook, with a copy as it was? (y/n) ");
    return answer.map(String::strip).filter(it -> it.matches("(?i)y|yes")).isPresent();
  }

  private Exit finish(AnyLayout layout, boolean wanted) {
    if (!wanted) {
      console.say("nothing was changed; --keep keeps the binding in the workbook");
      return Exit.FINE;
    }
    if (layout.bound().isEmpty()) {
      console.complain("there is nothing to keep: no cell is bound");
      return Exit.FAILED;
    }
    Path to = output == null ? file : output;
    Existing existing = output == null || force ? Existing.KEEP_COPY : Existing.REFUSE;
    Read<Saved> saved = Xlsx.edit(file, layout.store(), to, existing);
    Saving.said(console, saved, existing, to);
    return Exit.FINE;
  }
}
