package squaresheet.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs the whole job on the demo house, each step as a person would give it. */
@Command(
    name = "demo",
    description =
        "Run the whole job on the demo house: import, verify, answer what could not be read, verify a copy with planted"
            + " slips, totals, drawings;"
            + " then fill it into a form of another layout, mark slips in a copy and put them right.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet demo target/demo"})
final class DemoCommand implements Callable<Integer> {

  private final Console console;

  @Spec
  private CommandSpec spec;

  @Parameters(
      paramLabel = "FOLDER",
      description = "The folder to write to; made anew if it is not there.")
  private Path folder;

  @Option(
      names = "--data",
      paramLabel = "FOLDER",
      description = "The folder of the demo house; demo-data unless given.")
  private Path data = Path.of("demo-data");

  DemoCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    make(folder);
    Path job = folder.resolve("alder-lane.job.xlsx");
    Path planted = folder.resolve("alder-lane.planted.xlsx");
    Path totals = folder.resolve("totals.csv");
    boolean asTold =
        step(Exit.WITHHELD, "import", data.resolve("tape-sheet.csv"), "-o", job, "--force")
            && step(Exit.WITHHELD, "verify", job)
            && answer(job)
            && step(Exit.FINE, "verify", job)
            && plant(job, planted)
            && step(Exit.WITHHELD, "verify", planted)
            && step(Exit.WITHHELD, "totals", job, planted, "-o", totals, "--force")
            && step(Exit.FINE, "explain", job, "shingle_bundles")
            && step(Exit.FINE, "readings", job)
            && step(Exit.FINE, "draw", job, "-o", folder.resolve("drawings"), "--force")
            && form(job);
    files();
    return (asTold ? Exit.FINE : Exit.FAILED).code();
  }

  /** Answers the row of the tape sheet that could not be read, as a person types it. */
  private boolean answer(Path job) {
    console.say("");
    console.say(
        "The row that could not be read is answered in the workbook, on its sheet 'Not read':");
    Planted.answer(job).forEach(answer -> console.say("  " + answer));
    return true;
  }

  private boolean plant(Path job, Path planted) {
    console.say("");
    console.say("Three slips are planted in a copy:");
    Planted.in(job, planted).forEach(slip -> console.say("  " + slip));
    return true;
  }

  /** The same house in a form of somebody's own: filled, and with slips that are marked and put right in copies. */
  private boolean form(Path job) {
    Path filled = folder.resolve("roof-form.filled.xlsx");
    Path planted = folder.resolve("roof-form.planted.xlsx");
    Path marked = folder.resolve("roof-form.marked.xlsx");
    Path corrected = folder.resolve("roof-form.corrected.xlsx");
    Path blank = data.resolve("roof-form.xlsx");
    if (!step(Exit.FINE, "fill", blank, "--from", job, "--layout", "-o", filled, "--force")) {
      return false;
    }
    console.say("");
    console.say("Two slips are planted in a copy:");
    Planted.inForm(filled, planted).forEach(slip -> console.say("  " + slip));
    return step(Exit.WITHHELD, "mark", planted, "-o", marked, "--force")
        && step(Exit.WITHHELD, "correct", planted, "-o", corrected, "--force")
        && step(
            Exit.FINE,
            "correct",
            planted,
            "--take",
            "Takeoff!M7",
            "--take",
            "Takeoff!N18",
            "-o",
            corrected,
            "--force")
        && step(Exit.FINE, "verify", corrected);
  }

  /** Gives one command, and tells whether it ended as it should. */
  private boolean step(Exit expected, Object... words) {
    String[] given = java.util.Arrays.stream(words).map(Object::toString).toArray(String[]::new);
    console.say("");
    console.say("$ squaresheet " + String.join(" ", given));
    CommandLine root = spec.commandLine().getParent();
    int code = root.execute(given);
    console.say("(exit code " + code + ")");
    return code == expected.code();
  }

  private void files() {
    console.say("");
    console.say("The files are in " + folder + ":");
    try (var found = Files.walk(folder)) {
      List<Path> files = found.filter(Files::isRegularFile).sorted().toList();
      files.forEach(file -> console.say("  " + file));
    } catch (IOException unreadable) {
      throw new CannotBeDone(Exit.FAILED, folder + " cannot be listed; access to it may be denied");
    }
  }

  private static void make(Path folder) {
    try {
      Files.createDirectories(folder);
    } catch (IOException refused) {
      throw new CannotBeDone(
          Exit.FAILED,
          "the folder " + folder
              + " cannot be made; a file of that name may be there, or access denied");
    }
  }
}
