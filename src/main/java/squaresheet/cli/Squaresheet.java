package squaresheet.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;

/** The program as a whole: its commands, and what becomes of a wrong one. */
@Command(
    name = "squaresheet",
    description =
        "Models a shingle roof, takes off, lays out, prices and verifies the workbook it is kept in.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    subcommands = {
      ImportCommand.class,
      BindCommand.class,
      FillCommand.class,
      VerifyCommand.class,
      MarkCommand.class,
      CorrectCommand.class,
      TotalsCommand.class,
      ExplainCommand.class,
      ReadingsCommand.class,
      DrawCommand.class,
      BlankCommand.class,
      DemoCommand.class,
      CommandLine.HelpCommand.class
    },
    footer = {
      "",
      "Example: squaresheet import tape-sheet.csv -o job.xlsx",
      "",
      "Exit codes: 0 fine; 1 it could not be done; 2 the command was wrong; 3 findings withhold the totals."
    })
final class Squaresheet implements Callable<Integer> {

  @Spec
  private CommandSpec spec;

  /** Runs one command; with {@link Ansi#AUTO}, colour only where it ends on a terminal. */
  static int run(PrintWriter out, PrintWriter err, Ansi ansi, String... args) {
    return run(Optional.empty(), out, err, ansi, args);
  }

  /** Runs one command, with where a person answers from, if there is one. */
  static int run(
      Optional<BufferedReader> answers,
      PrintWriter out,
      PrintWriter err,
      Ansi ansi,
      String... args) {
    Console console = new Console(out, err, ansi, answers);
    CommandLine line = new CommandLine(new Squaresheet(), new Commands(console))
        .setOut(out)
        .setErr(err)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setColorScheme(CommandLine.Help.defaultColorScheme(ansi))
        .setParameterExceptionHandler((wrong, given) -> refuse(console, wrong))
        .setExecutionExceptionHandler((failure, command, parsed) -> fail(console, failure, parsed));
    try {
      return line.execute(args);
    } catch (OutOfMemoryError | StackOverflowError tooMuch) {
      console.complain(named(line.getParseResult()) + Guard.tooMuch());
      return Exit.FAILED.code();
    }
  }

  private static int refuse(Console console, ParameterException wrong) {
    console.complain(WrongUse.says(wrong));
    console.complain("See: " + wrong.getCommandLine().getCommandSpec().qualifiedName() + " --help");
    return Exit.WRONG_USE.code();
  }

  private static int fail(Console console, Exception failure, ParseResult parsed) {
    if (failure instanceof CannotBeDone told) {
      console.complain(told.getMessage());
      return told.exit().code();
    }
    console.complain(named(parsed) + Guard.fault(failure));
    return Exit.FAILED.code();
  }

  /** The files that a command was given, before what is said of them. */
  private static String named(ParseResult parsed) {
    ParseResult last = parsed;
    while (last.hasSubcommand()) {
      last = last.subcommand();
    }
    String files = last.matchedPositionals().stream()
        .flatMap(given -> given.stringValues().stream())
        .collect(Collectors.joining(", "));
    return files.isEmpty() ? "" : files + ": ";
  }

  @Override
  public Integer call() {
    spec.commandLine().usage(spec.commandLine().getOut());
    return Exit.WRONG_USE.code();
  }
}
