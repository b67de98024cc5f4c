package squaresheet.xlsx;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Changes to a part by byte positions; all bytes between them are copied as they are. */
final class Splices {

  private final List<Splice> all = new ArrayList<>();

  private record Splice(long start, long end, int rank, String text) {}

  /** Puts text in place of the bytes from start to before end. */
  void replace(long start, long end, String text) {
    all.add(new Splice(start, end, 0, text));
  }

  /** Puts text before the byte; several at one place stay in the order given. */
  void insert(long at, String text) {
    replace(at, at, text);
  }

  /** Puts an element before the byte; of several at one place the lower rank comes first. */
  void place(long at, int rank, String text) {
    all.add(new Splice(at, at, rank, text));
  }

  boolean isEmpty() {
    return all.isEmpty();
  }

  /** Copies a part with its changes. */
  void apply(InputStream from, OutputStream to) throws IOException {
    List<Splice> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparingLong(Splice::start)
        .thenComparingLong(Splice::end)
        .thenComparingInt(Splice::rank));
    long at = 0;
    for (Splice splice : sorted) {
      if (splice.start() < at) {
        throw new IllegalStateException("changes to a part must not overlap, but do");
      }
      copy(from, to, splice.start() - at);
      to.write(splice.text().getBytes(StandardCharsets.UTF_8));
      from.skipNBytes(splice.end() - splice.start());
      at = splice.end();
    }
    from.transferTo(to);
  }

  byte[] apply(byte[] part) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(part.length + 1024);
    try {
      apply(new ByteArrayInputStream(part), out);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return out.toByteArray();
  }

  private static void copy(InputStream from, OutputStream to, long count) throws IOException {
    byte[] buffer = new byte[1 << 16];
    long left = count;
    while (left > 0) {
      int read = from.read(buffer, 0, (int) Math.min(buffer.length, left));
      if (read < 0) {
        throw new IOException("unexpected end of a part");
      }
      to.write(buffer, 0, read);
      left -= read;
    }
  }
}
