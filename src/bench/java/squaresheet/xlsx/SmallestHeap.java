package squaresheet.xlsx;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** Finds the smallest heap in which the large file opens, a quarter more each time. */
final class SmallestHeap {

  private static final int PATIENCE_MINUTES = 4;

  private SmallestHeap() {}

  /** The first of the heaps tried that is enough; from the first one up, which is told where it already is. */
  static int megabytes(String reader, int from) throws IOException, InterruptedException {
    int heap = from;
    while (!opens(reader, heap)) {
      heap += heap / 4;
    }
    return heap;
  }

  private static boolean opens(String reader, int megabytes)
      throws IOException, InterruptedException {
    Process process = new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:+UseSerialGC",
            "-XX:+ExitOnOutOfMemoryError",
            "-Xmx" + megabytes + "m",
            "-cp",
            System.getProperty("java.class.path"),
            OpenOnce.class.getName(),
            reader)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
    boolean ended = process.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES);
    process.destroyForcibly();
    return ended && process.waitFor() == 0;
  }
}
