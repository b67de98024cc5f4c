package squaresheet.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;

/** Unpacks, and gives back the memory of its unpacker in the end. */
final class Inflated extends InflaterInputStream {

  private static final int BUFFER = 1 << 14;

  Inflated(InputStream packed, Inflater inflater) {
    super(packed, inflater, BUFFER);
  }

  @Override
  public void close() throws IOException {
    super.close();
    inf.end();
  }
}
