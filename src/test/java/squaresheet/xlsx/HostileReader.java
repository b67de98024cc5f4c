package squaresheet.xlsx;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Reads the files named, in a program of its own with little memory, and prints a line for each. */
final class HostileReader {

  /** Time spent working, which other programs on the same machine do not stretch. */
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private HostileReader() {}

  public static void main(String[] files) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    for (String each : files) {
      long start = CLOCK.getCurrentThreadCpuTime();
      String result = read(Path.of(each));
      long milliseconds = (CLOCK.getCurrentThreadCpuTime() - start) / 1_000_000;
      out.println(Path.of(each).getFileName() + "\t" + milliseconds + "\t" + result);
    }
  }

  private static String read(Path file) {
    Read<Workbook> read = Xlsx.read(file);
    String cells = read.value()
        .map(it -> it.sheets().stream().mapToInt(Sheet::size).sum() + " cells")
        .orElse("nothing");
    String says = read.findings().stream().map(Finding::says).findFirst().orElse("-");
    return cells + "\t" + says.replace('\n', ' ');
  }
}
