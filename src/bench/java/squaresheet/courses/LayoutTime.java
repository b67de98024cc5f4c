package squaresheet.courses;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/**
 * Prints the processor time of laying out roofs of ten to ten thousand planes, which other work on the machine disturbs less
 * than the clock's.
 */
public final class LayoutTime {

  private static final int[] SIZES = {10, 30, 100, 300, 1000, 3000, 10_000};
  private static final int WARM = 3000;
  private static final int RUNS = 7;

  private LayoutTime() {}

  /** One line for each size: planes, shingles, least milliseconds of several runs, microseconds for a plane. */
  public static void main(String[] none) {
    PrintStream out = System.out;
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    time(1000, threads);
    for (int planes : SIZES) {
      RoofLayoutBench bench = RoofLayoutBench.of(planes);
      double best = time(planes, threads);
      out.printf(
          "%6d planes %9d shingles %8.2f ms %6.1f us a plane%n",
          planes, bench.count().used(), best, best * 1000 / planes);
    }
  }

  private static double time(int planes, ThreadMXBean threads) {
    RoofLayoutBench bench = RoofLayoutBench.of(planes);
    for (int run = 0; run < Math.max(2, WARM / planes); run++) {
      bench.count();
    }
    long best = Long.MAX_VALUE;
    for (int run = 0; run < RUNS; run++) {
      long before = threads.getCurrentThreadCpuTime();
      bench.count();
      best = Math.min(best, threads.getCurrentThreadCpuTime() - before);
    }
    return best / 1e6;
  }
}
