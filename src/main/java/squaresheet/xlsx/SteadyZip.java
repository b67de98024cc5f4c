package squaresheet.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.function.BiFunction;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Zips anew with one fixed time on every part, so that equal parts make equal files. */
final class SteadyZip {

  /** The first day a zip can name; at noon, because its first second stands for no time, which then depends on the zone. */
  static final LocalDateTime FIXED = LocalDateTime.of(1980, 1, 1, 12, 0);

  private SteadyZip() {}

  /** Zips anew what the change makes of each part, told its name. */
  static void rewrite(byte[] zip, OutputStream to, BiFunction<String, byte[], byte[]> change)
      throws IOException {
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip));
        ZipOutputStream out = new ZipOutputStream(to)) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        ZipEntry steady = new ZipEntry(part.getName());
        steady.setTimeLocal(FIXED);
        out.putNextEntry(steady);
        out.write(change.apply(part.getName(), in.readAllBytes()));
        out.closeEntry();
      }
    }
  }
}
