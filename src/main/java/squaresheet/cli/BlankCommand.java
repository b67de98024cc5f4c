package squaresheet.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import squaresheet.binding.FieldSheet;

/** Writes a blank field sheet to print. */
@Command(
    name = "blank",
    description = "Write a blank field sheet to print and fill in on the roof.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet blank field-sheet.xlsx --paper a4"})
final class BlankCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "FILE", description = "The workbook to write.")
  private Path file;

  @Mixin
  private PaperOption paper;

  @Mixin
  private ForceOption force;

  BlankCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Ending.must(file, ".xlsx");
    force.saving(console).workbook(FieldSheet.blank(paper.size()), file);
    return Exit.FINE.code();
  }
}
