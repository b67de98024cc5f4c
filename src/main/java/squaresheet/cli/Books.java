package squaresheet.cli;

import java.nio.file.Path;
import java.util.List;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.sheet.Workbook;
import squaresheet.xlsx.Xlsx;

/** Reads workbook files for the commands. */
final class Books {

  private Books() {}

  /** The workbook of a file, which must be readable. */
  static Read<Workbook> read(Path file) {
    Read<Workbook> read = Xlsx.read(file);
    if (read.value().isEmpty()) {
      throw new CannotBeDone(Exit.FAILED, says(read.findings()));
    }
    return read;
  }

  /** Whether all of the workbook was read; of one that was read in part no amounts are given. */
  static boolean isWhole(Read<Workbook> read) {
    return read.value().isPresent() && read.findings().stream().noneMatch(Finding::isError);
  }

  static String name(Path file) {
    Path last = file.getFileName();
    return last == null ? file.toString() : last.toString();
  }

  /** The name without its ending. */
  static String bare(Path file) {
    return name(file).replaceFirst("\\.[^.]+$", "");
  }

  private static String says(List<Finding> findings) {
    return findings.get(0).where() + ": " + findings.get(0).says();
  }
}
