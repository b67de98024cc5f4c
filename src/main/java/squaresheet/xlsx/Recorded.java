package squaresheet.xlsx;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** A stream that remembers what it gave last, so that a tag just read can be had as it is spelled. */
final class Recorded extends FilterInputStream {

  private static final int REMEMBERED = 1 << 18;

  private final byte[] last = new byte[REMEMBERED];
  private long given;

  Recorded(InputStream in) {
    super(in);
  }

  /** The text from start to before end, counted in bytes from the start. */
  String text(long start, long end) {
    if (start < given - REMEMBERED || end > given || end - start > REMEMBERED) {
      throw new Refusal("holds an element too long to be changed");
    }
    byte[] found = new byte[(int) (end - start)];
    for (int i = 0; i < found.length; i++) {
      found[i] = last[(int) ((start + i) % REMEMBERED)];
    }
    return new String(found, StandardCharsets.UTF_8);
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] to, int from, int most) throws IOException {
    int read = in.read(to, from, Math.min(most, REMEMBERED));
    for (int done = 0; done < read; ) {
      int at = (int) (given % REMEMBERED);
      int some = Math.min(read - done, REMEMBERED - at);
      System.arraycopy(to, from + done, last, at, some);
      done += some;
      given += some;
    }
    return read;
  }
}
