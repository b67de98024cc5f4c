package squaresheet.xlsx;

import java.nio.file.Path;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;

/** What this room says about a user's file. */
final class Complaint {

  static final CheckInfo NOT_READ =
      new CheckInfo("workbook-not-read", Severity.ERROR, "The file cannot be read as a workbook");
  static final CheckInfo NOT_SAVED =
      new CheckInfo("file-not-saved", Severity.ERROR, "The file cannot be saved");
  static final CheckInfo IS_THERE =
      new CheckInfo("file-is-there", Severity.ERROR, "There is a file of that name already");
  static final CheckInfo NOT_EDITED =
      new CheckInfo("workbook-not-edited", Severity.ERROR, "The workbook cannot be changed so");
  static final CheckInfo PARTLY_READ = new CheckInfo(
      "workbook-partly-read", Severity.WARNING, "Part of the workbook cannot be read");
  static final CheckInfo READ_NOTE =
      new CheckInfo("workbook-read-note", Severity.NOTE, "Something in the workbook is not used");

  private Complaint() {}

  static Finding of(CheckInfo info, Path file, String says) {
    return new Finding(info, new Where.InFile(name(file)), says);
  }

  static Finding at(CheckInfo info, Path file, Address cell, String says) {
    return new Finding(info, new Where.InCell(name(file), cell), says);
  }

  static String name(Path file) {
    Path last = file.getFileName();
    return last == null ? file.toString() : last.toString();
  }
}
