package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Read;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;

/** Of changes made to one file at once none is lost. */
class TurnTest {

  private static final int EDITS = 80;

  @TempDir
  Path folder;

  private Path book() throws IOException {
    return Files.write(
        folder.resolve("job.xlsx"), ZipParts.zip(ZipParts.smallest(ZipParts.sheet("", ""))));
  }

  private static Read<Saved> edit(Path file, int row, Existing existing) {
    Edit edit = new Edit.SetContent(Address.of("Planes", "A" + row), new Content.Numeric(row));
    return Xlsx.edit(file, List.of(edit), file, existing);
  }

  private static List<Integer> there(Path file) {
    Workbook workbook = Xlsx.read(file).value().orElseThrow();
    return IntStream.rangeClosed(1, EDITS)
        .filter(row -> workbook
            .cell(Address.of("Planes", "A" + row))
            .stored()
            .equals(new Content.Numeric(row)))
        .boxed()
        .toList();
  }

  private static List<Integer> all() {
    return IntStream.rangeClosed(1, EDITS).boxed().toList();
  }

  private static <T> List<T> atOnce(List<Callable<T>> works) throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(16);
    try {
      List<T> done = new ArrayList<>();
      for (Future<T> each : pool.invokeAll(works)) {
        done.add(each.get());
      }
      return done;
    } finally {
      pool.shutdownNow();
    }
  }

  @Test
  void edits_of_one_file_at_once_are_all_in_it() throws Exception {
    Path file = book();
    Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), file);
    Files.createDirectory(folder.resolve("sub"));
    List<Path> ways = List.of(file, link, folder.resolve("sub/../job.xlsx"));
    List<Callable<Read<Saved>>> works = all().stream()
        .<Callable<Read<Saved>>>map(row -> () -> edit(ways.get(row % 3), row, Existing.REPLACE))
        .toList();
    List<Read<Saved>> done = atOnce(works);
    List<Integer> saved = IntStream.range(0, EDITS)
        .filter(at -> done.get(at).value().isPresent())
        .mapToObj(at -> at + 1)
        .toList();
    assertThat(there(file)).as("what was said to be saved").containsAll(saved);
    assertThat(saved).as("they wait for each other").isEqualTo(all());
  }

  @Test
  void every_version_saved_at_once_is_kept() throws Exception {
    Path file = folder.resolve("totals.csv");
    List<Callable<Read<Saved>>> works = all().stream()
        .<Callable<Read<Saved>>>map(row -> () -> SafeFile.save(
            file, ("version " + row).getBytes(StandardCharsets.UTF_8), Existing.KEEP_COPY))
        .toList();
    assertThat(atOnce(works)).allMatch(read -> read.value().isPresent());
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(TurnTest::text).sorted().toList())
          .isEqualTo(all().stream().map(row -> "version " + row).sorted().toList());
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException failure) {
      throw new AssertionError(failure);
    }
  }

  @Test
  void two_programs_wait_for_each_other_too() throws IOException, InterruptedException {
    Path file = book();
    Process odd = program(file, 1);
    Process even = program(file, 2);
    assertThat(odd.waitFor(2, TimeUnit.MINUTES)).isTrue();
    assertThat(even.waitFor(2, TimeUnit.MINUTES)).isTrue();
    assertThat(odd.exitValue() + even.exitValue()).isZero();
    assertThat(there(file)).isEqualTo(all());
  }

  private Process program(Path file, int first) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Program.class.getName(),
            file.toString(),
            Integer.toString(first))
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("log-" + first + ".txt").toFile())
        .start();
  }

  /** Edits every second row; ends with how many edits were refused. */
  static final class Program {

    private Program() {}

    public static void main(String[] arguments) {
      int refused = 0;
      for (int row = Integer.parseInt(arguments[1]); row <= EDITS; row += 2) {
        refused += edit(Path.of(arguments[0]), row, Existing.REPLACE).value().isPresent() ? 0 : 1;
      }
      System.exit(refused);
    }
  }
}
