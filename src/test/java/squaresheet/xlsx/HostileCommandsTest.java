package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever workbook a command is given, it ends within 10 seconds and 256 MB, with sentences and never a stack trace. */
class HostileCommandsTest {

  private static final long MOST_MILLISECONDS = 10_000;

  @TempDir
  Path folder;

  /** Every command's exit code by file: verify, explain, bind, totals, draw, and an edit. */
  private String exits(List<Path> files) throws IOException, InterruptedException {
    Map<String, StringBuilder> exits = new LinkedHashMap<>();
    for (String line : run(files)) {
      String[] told = line.split("\t", -1);
      assertThat(told).as(line).hasSize(5);
      assertThat(Long.parseLong(told[2])).as(line).isLessThan(MOST_MILLISECONDS);
      assertThat(told[4])
          .as(line)
          .isNotBlank()
          .doesNotContain("Exception", "<tab>at ", "through no fault");
      exits.computeIfAbsent(told[0], none -> new StringBuilder()).append(" ").append(told[3]);
    }
    StringBuilder table = new StringBuilder();
    exits.forEach((file, codes) -> table.append(file).append(" |").append(codes).append('\n'));
    return table.toString();
  }

  private List<String> run(List<Path> files) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-Xmx256m",
        "-Djava.awt.headless=true",
        "-cp",
        System.getProperty("java.class.path"),
        "squaresheet.cli.EveryCommand"));
    files.forEach(file -> command.add(file.toString()));
    Path output = folder.resolve("output.txt");
    Process process = new ProcessBuilder(command)
        .redirectOutput(output.toFile())
        .redirectError(folder.resolve("errors.txt").toFile())
        .start();
    assertThat(process.waitFor(10, TimeUnit.MINUTES)).isTrue();
    assertThat(Files.readString(folder.resolve("errors.txt")))
        .doesNotContain("OutOfMemory", "StackOverflow", "Exception");
    return Files.readAllLines(output, StandardCharsets.UTF_8);
  }

  /** 0 is fine, 1 cannot be done, 3 totals withheld: of a workbook read in part none are given. */
  @Test
  void every_command_ends_in_sentences_on_damaged_and_oversized_files()
      throws IOException, InterruptedException {
    Hostile hostile = new Hostile(folder);
    assertThat(exits(List.of(
            hostile.bomb(),
            hostile.deep(),
            hostile.entities(),
            hostile.millionEmpty(),
            hostile.sharedCycle(),
            hostile.cut(5),
            hostile.cutPart(),
            hostile.twice(),
            hostile.wrongTypes(),
            hostile.oldExcel())))
        .isEqualTo("""
            bomb.xlsx | 1 1 1 1 1 1
            deep.xlsx | 3 0 1 1 1 1
            entities.xlsx | 3 0 1 1 1 1
            empty-cells.xlsx | 0 0 1 3 1 0
            cycle.xlsx | 3 0 1 3 1 0
            cut-5.xlsx | 1 1 1 1 1 1
            cut-part.xlsx | 3 0 1 1 1 1
            twice.xlsx | 1 1 1 1 1 1
            types.xlsx | 1 1 1 1 1 1
            old.xls | 1 1 1 1 1 1
            """);
  }

  @Test
  void every_command_ends_in_sentences_on_formulas_that_ask_for_too_much()
      throws IOException, InterruptedException {
    HostileSums sums = new HostileSums(folder);
    assertThat(exits(List.of(
            sums.nested(), sums.nestedCalls(), sums.signs(), sums.doubling(), sums.branching())))
        .isEqualTo("""
            nested.xlsx | 3 0 1 3 1 0
            calls.xlsx | 3 0 1 3 1 0
            signs.xlsx | 3 0 1 3 1 0
            doubling.xlsx | 3 0 1 3 1 0
            branching.xlsx | 3 0 1 3 1 0
            """);
  }

  @Test
  void every_command_ends_in_sentences_on_thousands_of_formulas_that_lean_on_each_other()
      throws IOException, InterruptedException {
    HostileSums sums = new HostileSums(folder);
    assertThat(exits(List.of(
            sums.ring(), sums.chain(), sums.everyColumn(), sums.wholeColumns(), sums.triangle())))
        .isEqualTo("""
            ring.xlsx | 3 0 1 3 1 0
            chain.xlsx | 3 0 1 3 1 0
            columns.xlsx | 3 0 1 3 1 0
            products.xlsx | 3 0 1 3 1 0
            triangle.xlsx | 3 0 1 3 1 0
            """);
  }
}
