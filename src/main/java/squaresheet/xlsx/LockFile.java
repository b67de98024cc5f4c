package squaresheet.xlsx;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** The small files by which spreadsheet programs tell each other that a workbook is open. */
final class LockFile {

  private LockFile() {}

  /** The lock file beside the workbook, if there is one. */
  static Optional<Path> of(Path file) {
    String name = Complaint.name(file);
    String cut = name.length() > 2 ? name.substring(2) : name;
    return Stream.of(".~lock." + name + "#", "~$" + name, "~$" + cut)
        .map(file::resolveSibling)
        .filter(lock -> Files.exists(lock, LinkOption.NOFOLLOW_LINKS))
        .findFirst();
  }
}
