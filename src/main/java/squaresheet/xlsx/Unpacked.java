package squaresheet.xlsx;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.LongConsumer;

/** Counts what a part unpacks to, and ends where that is more than a real one ever does. */
final class Unpacked extends FilterInputStream {

  /** Below this any part may be packed as well as it likes. */
  private static final long SMALL = 100 << 10;

  private static final int MOST_TIMES = 100;

  private final long packed;
  private final LongConsumer spend;
  private long count;

  Unpacked(InputStream in, long packed, LongConsumer spend) {
    super(in);
    this.packed = packed;
    this.spend = spend;
  }

  @Override
  public int read() throws IOException {
    int read = in.read();
    count(read < 0 ? 0 : 1);
    return read;
  }

  @Override
  public int read(byte[] to, int from, int most) throws IOException {
    int read = in.read(to, from, most);
    count(Math.max(0, read));
    return read;
  }

  @Override
  public long skip(long most) throws IOException {
    long skipped = in.skip(most);
    count(skipped);
    return skipped;
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
