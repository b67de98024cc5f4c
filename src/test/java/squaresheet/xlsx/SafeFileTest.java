package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;

class SafeFileTest {

  private static final int SIZE = 1 << 20;

  @TempDir
  Path folder;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String says(Read<Saved> saved) {
    assertThat(saved.value()).isEmpty();
    return saved.findings().stream().map(Finding::says).findFirst().orElseThrow();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(it -> it.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void every_version_is_kept_and_none_overwritten() throws IOException {
    Path file = folder.resolve("job.xlsx");
    for (String text : List.of("one", "two", "three")) {
      assertThat(SafeFile.save(file, bytes(text), Existing.KEEP_COPY).value()).isPresent();
    }
    assertThat(names())
        .containsExactly("job (previous 1).xlsx", "job (previous 2).xlsx", "job.xlsx");
    assertThat(file).hasContent("three");
    assertThat(folder.resolve("job (previous 1).xlsx")).hasContent("one");
    assertThat(folder.resolve("job (previous 2).xlsx")).hasContent("two");
  }

  @Test
  void no_copy_is_kept_when_told_not_to() throws IOException {
    Path file = folder.resolve("job.xlsx");
    SafeFile.save(file, bytes("one"), Existing.KEEP_COPY);
    SafeFile.save(file, bytes("two"), Existing.REPLACE);
    assertThat(names()).containsExactly("job.xlsx");
    assertThat(says(SafeFile.save(file, bytes("three"), Existing.REFUSE)))
        .isEqualTo("'job.xlsx' is there already and was left alone; choose another name");
    assertThat(file).hasContent("two");
  }

  @Test
  void a_file_open_elsewhere_is_left_alone_and_said_so() throws IOException {
    Path file = Files.writeString(folder.resolve("job.xlsx"), "one");
    for (String lock : List.of(".~lock.job.xlsx#", "~$job.xlsx")) {
      Path locked = Files.writeString(folder.resolve(lock), "");
      assertThat(says(SafeFile.save(file, bytes("two"), Existing.KEEP_COPY)))
          .isEqualTo("'job.xlsx' must be closed in other programs first, but one has it open ('"
              + lock + "' is there); nothing was changed");
      Files.delete(locked);
    }
    assertThat(file).hasContent("one");
  }

  @Test
  void a_body_that_fails_half_way_leaves_all_as_it_was() throws IOException {
    Path file = Files.writeString(folder.resolve("job.xlsx"), "one");
    Read<Saved> saved = SafeFile.save(file, Existing.KEEP_COPY, out -> {
      out.write(new byte[SIZE]);
      throw new IOException("No space left on device");
    });
    assertThat(says(saved))
        .isEqualTo("'job.xlsx' could not be saved (the disk is full); nothing was changed");
    assertThat(file).hasContent("one");
    assertThat(names()).containsExactly("job.xlsx");
  }

  @Test
  void a_place_that_cannot_be_written_is_said() throws IOException {
    assertThat(says(SafeFile.save(folder, bytes("x"), Existing.KEEP_COPY)))
        .endsWith("must be a file, but is a folder");
    assertThat(says(SafeFile.save(folder.resolve("none/job.xlsx"), bytes("x"), Existing.KEEP_COPY)))
        .isEqualTo("the folder '" + folder.resolve("none") + "' must be there, but is not");
    Path device = Path.of("/dev/full");
    if (Files.exists(device) && !Files.isWritable(device.getParent())) {
      assertThat(says(SafeFile.save(device, bytes("x"), Existing.REPLACE))).isNotEmpty();
    }
  }

  /** The program is killed at times that fall into every step of saving, over and over. */
  @Test
  void a_program_killed_while_saving_leaves_a_whole_file()
      throws IOException, InterruptedException {
    Path file = folder.resolve("job.xlsx");
    SafeFile.save(file, Version.bytes(0), Existing.REPLACE);
    int versions = 0;
    for (int round = 0; round < 12; round++) {
      Process process = new ProcessBuilder(
              Path.of(System.getProperty("java.home"), "bin", "java").toString(),
              "-Xmx128m",
              "-cp",
              System.getProperty("java.class.path"),
              Version.class.getName(),
              file.toString())
          .redirectErrorStream(true)
          .redirectOutput(folder.resolve("log.txt").toFile())
          .start();
      awaitChange(file, Files.getLastModifiedTime(file).toMillis());
      Thread.sleep(7L * round);
      process.destroyForcibly();
      assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
      assertThat(Version.isWhole(Files.readAllBytes(file))).as("round " + round).isTrue();
      versions += wholeCopies();
    }
    assertThat(versions).isPositive();
    assertThat(SafeFile.save(file, Version.bytes(3), Existing.REPLACE).value()).isPresent();
  }

  private static void awaitChange(Path file, long before) throws IOException, InterruptedException {
    for (int i = 0; i < 2000 && Files.getLastModifiedTime(file).toMillis() == before; i++) {
      Thread.sleep(5);
    }
  }

  private int wholeCopies() throws IOException {
    int count = 0;
    try (Stream<Path> files = Files.list(folder)) {
      for (Path copy : files.filter(it -> it.toString().contains("previous")).toList()) {
        assertThat(Version.isWhole(Files.readAllBytes(copy)))
            .as(copy.toString())
            .isTrue();
        Files.delete(copy);
        count++;
      }
    }
    return count;
  }

  /** Saves one version after the other until it is killed. */
  static final class Version {

    private Version() {}

    public static void main(String[] arguments) {
      Path file = Path.of(arguments[0]);
      for (int version = 1; ; version++) {
        SafeFile.save(file, bytes(version), Existing.KEEP_COPY);
      }
    }

    static byte[] bytes(int version) {
      byte[] bytes = new byte[SIZE];
      Arrays.fill(bytes, (byte) version);
      return bytes;
    }

    static boolean isWhole(byte[] bytes) {
      return bytes.length == SIZE && Arrays.equals(bytes, bytes(bytes[0]));
    }
  }
}
