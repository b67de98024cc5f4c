package squaresheet.cli;

import picocli.CommandLine.Option;

/** The option to write where a file is there already. */
final class ForceOption {

  @Option(
      names = "--force",
      description = "Write even where a file is there already; a copy of it is kept.")
  private boolean force;

  Saving saving(Console console) {
    return new Saving(console, force);
  }
}
