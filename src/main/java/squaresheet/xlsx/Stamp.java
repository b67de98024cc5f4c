package squaresheet.xlsx;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;

/** When a file was last written and how long it is: what changes when somebody else saves it meanwhile. */
record Stamp(FileTime written, long length) {

  static Stamp of(Path file) {
    try {
      return new Stamp(Files.getLastModifiedTime(file), Files.size(file));
    } catch (IOException none) {
      return new Stamp(FileTime.fromMillis(0), -1);
    }
  }

  void refuseIfChanged(Path file) {
    if (!equals(of(file))) {
      throw new Refusal("'" + Complaint.name(file)
          + "' was saved by another program in the meantime; read it again, nothing was changed");
    }
  }
}
