package squaresheet.cli;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/**
 * Runs every command that takes a workbook on the files named, and one edit, in a program of its own with little memory. Prints
 * a line for each: the file, the command, milliseconds, the exit code and the first thing said.
 */
public final class EveryCommand {

  /** Time spent working, which other programs on the same machine do not stretch. */
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private EveryCommand() {}

  public static void main(String[] files) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    for (String file : files) {
      for (String[] command : commands(file)) {
        out.println(line(file, command));
      }
    }
  }

  private static List<String[]> commands(String file) {
    return List.of(
        new String[] {"verify", file},
        new String[] {"explain", file, "Planes!B1"},
        new String[] {"bind", file, "--keep", "-o", file + "-bound.xlsx"},
        new String[] {"totals", file},
        new String[] {"draw", file, "-o", file + "-drawings"},
        new String[] {"edit", file});
  }

  private static String line(String file, String[] command) {
    long start = CLOCK.getCurrentThreadCpuTime();
    Ran ran = command[0].equals("edit") ? edited(Path.of(file)) : Ran.of(command);
    long milliseconds = (CLOCK.getCurrentThreadCpuTime() - start) / 1_000_000;
    return String.join(
        "\t",
        Path.of(file).getFileName().toString(),
        command[0],
        Long.toString(milliseconds),
        Integer.toString(ran.exit()),
        ran.all().replace("\t", "<tab>").replaceAll("\\R", " / "));
  }

  private static Ran edited(Path file) {
    Edit edit = new Edit.SetContent(Address.of("Planes", "A3"), new Content.Numeric(2));
    Path to = Path.of(file + "-edited.xlsx");
    var findings = Xlsx.edit(file, List.of(edit), to, Existing.REPLACE).findings();
    return new Ran(findings.isEmpty() ? 0 : 1, findings.toString(), "");
  }
}
