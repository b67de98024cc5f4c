package squaresheet.cli;

import java.nio.file.Path;
import java.util.List;
import squaresheet.binding.BoundJob;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.verify.JobPapers;

/** Reads the job that a workbook holds. */
final class JobBook {

  private JobBook() {}

  static BoundJob bound(Path file, Rulebook rulebook) {
    Workbook workbook = Books.read(file).value().orElseThrow();
    return known(file, JobWorkbook.read(workbook, Books.name(file), rulebook));
  }

  /** The workbook's papers, and whether any of them is withheld. */
  static JobPapers papers(Path file, Workbook workbook, Rulebook rulebook) {
    return known(file, JobPapers.of(workbook, Books.name(file), rulebook));
  }

  private static <T> T known(Path file, Read<T> read) {
    return read.value()
        .orElseThrow(() -> new CannotBeDone(Exit.FAILED, why(file, read.findings())));
  }

  private static String why(Path file, List<Finding> findings) {
    return Books.name(file) + " holds no job that can be worked out: "
        + findings.get(0).says();
  }
}
