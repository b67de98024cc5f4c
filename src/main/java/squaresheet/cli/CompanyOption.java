package squaresheet.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import squaresheet.finding.Read;
import squaresheet.takeoff.Rulebook;

/** The option that names the company whose rules a workbook follows. */
final class CompanyOption {

  @Option(
      names = "--company",
      paramLabel = "FOLDER",
      description =
          "The folder with your company's rulebook.csv or .xlsx, whose rules go before the standard ones; the standard rules"
              + " alone unless given.")
  private Path folder;

  /** The company's rules; what could not be read of them is said. */
  Rulebook rulebook(Console console) {
    return rulebook(console, folder);
  }

  /** The same of a folder that another option names, if it names one. */
  static Rulebook rulebook(Console console, Path folder) {
    if (folder == null) {
      return Rulebook.standard();
    }
    Read<Rulebook> read = CompanyFolder.rulebook(folder);
    console.say(read.findings());
    return read.value().orElseThrow();
  }
}
