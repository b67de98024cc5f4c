package squaresheet.xlsx;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.sheet.Address;

/** What there is to say while a file is read; a flood is cut short and counted. */
final class Remarks {

  private static final int MOST = 100;

  private final Path file;
  private final List<Finding> findings = new ArrayList<>();
  private int untold;

  Remarks(Path file) {
    this.file = file;
  }

  void add(CheckInfo info, String says) {
    add(Complaint.of(info, file, says));
  }

  void add(CheckInfo info, Address cell, String says) {
    add(Complaint.at(info, file, cell, says));
  }

  private void add(Finding finding) {
    if (findings.size() < MOST) {
      findings.add(finding);
    } else {
      untold++;
    }
  }

  List<Finding> findings() {
    List<Finding> all = new ArrayList<>(findings);
    if (untold > 0) {
      all.add(Complaint.of(
          Complaint.PARTLY_READ,
          file,
          "has " + untold + " more places like these that cannot be read"));
    }
    return all;
  }
}
