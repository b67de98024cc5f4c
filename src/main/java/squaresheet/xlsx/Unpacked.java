package squaresheet.xlsx;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.LongConsumer;
import java.util.zip.CRC32;
import java.util.zip.ZipException;

/**
 * Counts what a part unpacks to, and ends where that is more than a real one ever does. At the end it holds the part against
 * the checksum that the zip has of it.
 */
final class Unpacked extends FilterInputStream {

  /** Below this any part may be packed as well as it likes. */
  private static final long SMALL = 100 << 10;

  private static final int MOST_TIMES = 100;

  private final long packed;
  private final long sum;
  private final LongConsumer spend;
  private final CRC32 found = new CRC32();
  private long count;

  Unpacked(InputStream in, long packed, long sum, LongConsumer spend) {
    super(in);
    this.packed = packed;
    this.sum = sum;
    this.spend = spend;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] to, int from, int most) throws IOException {
    int read = in.read(to, from, most);
    if (read < 0 && found.getValue() != sum) {
      throw new ZipException("a part does not fit its checksum");
    }
    found.update(to, from, Math.max(0, read));
    count(Math.max(0, read));
    return read;
  }

  @Override
  public long skip(long most) throws IOException {
    return Math.max(0, read(new byte[(int) Math.min(most, SMALL)]));
  }

  @Override
  public boolean markSupported() {
    return false;
  }

  private void count(long bytes) {
    count += bytes;
    spend.accept(count);
    if (count > SMALL && count / MOST_TIMES > packed) {
      throw Refusal.ofAll(
          "unpacks to more than a hundred times its size, which no workbook does; it was not read"
              + " further");
    }
  }
}
