package squaresheet.cli;

import picocli.CommandLine.Option;
import squaresheet.sheet.DraftSheet.Paper;

/** The option that says on what paper a workbook will be printed. */
final class PaperOption {

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      description = "letter or a4; letter unless given.")
  private Paper paper = Paper.LETTER;

  Paper size() {
    return paper;
  }
}
