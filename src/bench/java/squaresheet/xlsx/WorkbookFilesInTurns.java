package squaresheet.xlsx;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

/**
 * Every figure of the page on workbook files. The measurements of {@link WorkbookFilesBench} take turns in one process, as
 * processor time of the working thread, the least of so many rounds: other work on the machine moves these far less than times
 * by the clock. Then the smallest heaps are looked for in processes of their own.
 */
public final class WorkbookFilesInTurns {

  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  /** One kind of work, what it is beside ours, and what ours may at most cost of it. */
  private record Work(String what, String most, int ours) {}

  private static final List<Work> WORKS = List.of(
      new Work("opened to its cells, ours (`open_ours`)", "", 0),
      new Work("… beside POI's object model (`open_xssf`)", "at most 0.5", 0),
      new Work("… beside unzipping and stepping through with the JDK's reader (`unzip_and_stax_of_the_jdk`)", "at most 3", 0),
      new Work("… the same with the reader we use (`unzip_and_stax_of_aalto`)", "at most 3", 0),
      new Work("… beside fastexcel-reader (`open_fastexcel`)", "at most 1", 0),
      new Work("one cell changed and saved, ours (`edit_ours`)", "", 5),
      new Work("… beside POI's object model (`edit_xssf`)", "at most 0.3 at 20 MB", 5));

  /** Rows of a file, and rounds. */
  private static final int[][] SIZES = {{220, 1200}, {8_000, 20}, {150_000, 3}};

  private WorkbookFilesInTurns() {}

  public static void main(String[] arguments) throws Exception {
    double[][] times = new double[SIZES.length][];
    for (int size = 0; size < SIZES.length; size++) {
      times[size] = least(SIZES[size][0], SIZES[size][1]);
    }
    System.out.println("| what | 30 KB | 1 MB | 20 MB | ratio | must be |\n|---|---|---|---|---|---|");
    for (int row = 0; row < WORKS.size(); row++) {
      System.out.println(line(row, times));
    }
    System.out.println(heaps());
  }

  private static double[] least(int rows, int rounds) throws Exception {
    WorkbookFilesBench bench = new WorkbookFilesBench();
    bench.rows = rows;
    bench.write();
    Callable<?>[] all = {
      bench::open_ours, bench::open_xssf, bench::unzip_and_stax_of_the_jdk,
      bench::unzip_and_stax_of_aalto, bench::open_fastexcel, bench::edit_ours, bench::edit_xssf
    };
    double[] least = new double[all.length];
    Arrays.fill(least, Double.MAX_VALUE);
    for (int round = 0; round < rounds; round++) {
      for (int i = 0; i < all.length; i++) {
        long start = CLOCK.getCurrentThreadCpuTime();
        all[i].call();
        least[i] = Math.min(least[i], (CLOCK.getCurrentThreadCpuTime() - start) / 1e6);
      }
    }
    return least;
  }

  private static String line(int row, double[][] times) {
    Work work = WORKS.get(row);
    List<String> ratios = new ArrayList<>();
    StringBuilder line = new StringBuilder("| " + work.what + " |");
    for (double[] each : times) {
      line.append(String.format(Locale.ROOT, each[row] < 20 ? " %.1f ms |" : " %.0f ms |", each[row]));
      ratios.add(String.format(Locale.ROOT, "%.2f", each[work.ours] / each[row]));
    }
    return line.append(" " + (row == work.ours ? "" : String.join(", ", ratios)) + " | " + work.most + " |").toString();
  }

  private static String heaps() throws IOException, InterruptedException {
    int ours = SmallestHeap.megabytes("ours", 64);
    int theirs = SmallestHeap.megabytes("xssf", 4 * ours);
    return String.format(
        Locale.ROOT,
        "| smallest heap that opens the 20 MB file, ours, and POI's object model (`OpenOnce`) | | | %d MB, %d MB | %.2f | at most 0.25 |",
        ours,
        theirs,
        (double) ours / theirs);
  }
}
