package squaresheet.xlsx;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.Locale;
import java.util.zip.ZipException;

/** Why a file could not be read, as one sentence. */
final class Unreadable {

  private Unreadable() {}

  static String says(IOException failure) {
    String message = String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT);
    if (failure instanceof AccessDeniedException) {
      return "must be readable, but access is denied";
    }
    if (failure instanceof NoSuchFileException) {
      return "must be a workbook file, but is not there";
    }
    if (failure instanceof ZipException
        || failure instanceof EOFException
        || message.contains("zip")
        || message.contains("crc")
        || message.contains("truncated")
        || message.contains("unexpected end")) {
      return "must be an .xlsx workbook, but is cut off or damaged; fetch it again, or open an older copy";
    }
    return "cannot be read to its end; the disk or the network may be at fault";
  }
}
