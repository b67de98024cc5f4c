package squaresheet.xlsx;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.Callable;

/**
 * The measurements of {@link WorkbookFilesBench} taken in turns in one process, as processor time of the working thread: the
 * least of so many rounds. Other work on the machine moves these far less than times by the clock.
 */
public final class ProcessorTimes {

  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
  private static final String[] NAMES = {
    "open_ours", "open_fastexcel", "open_xssf", "unzip_and_stax_of_the_jdk", "unzip_and_stax_of_aalto", "edit_ours", "edit_xssf"
  };

  private ProcessorTimes() {}

  public static void main(String[] arguments) throws Exception {
    WorkbookFilesBench bench = new WorkbookFilesBench();
    bench.rows = Integer.parseInt(arguments[0]);
    bench.write();
    long[] least = new long[NAMES.length];
    java.util.Arrays.fill(least, Long.MAX_VALUE);
    for (int round = 0; round < Integer.parseInt(arguments[1]); round++) {
      Callable<?>[] all = {
        bench::open_ours, bench::open_fastexcel, bench::open_xssf, bench::unzip_and_stax_of_the_jdk,
        bench::unzip_and_stax_of_aalto, bench::edit_ours, bench::edit_xssf
      };
      for (int i = 0; i < all.length; i++) {
        long start = CLOCK.getCurrentThreadCpuTime();
        all[i].call();
        least[i] = Math.min(least[i], CLOCK.getCurrentThreadCpuTime() - start);
      }
    }
    for (int i = 0; i < NAMES.length; i++) {
      System.out.printf("%-28s %8.1f ms%n", NAMES[i], least[i] / 1e6);
    }
  }
}
