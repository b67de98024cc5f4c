package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.logging.log4j.LogManager;
import org.junit.jupiter.api.Test;
import squaresheet.xlsx.Xlsx;

/** A program that uses the library logs as it has set up to; only the command line keeps the log of its libraries quiet. */
class HostLoggingTest {

  /** A program of somebody else. */
  static final class Host {
    private Host() {}

    public static void main(String[] file) {
      LogManager.getLogger("host").error("before the library");
      boolean read = Xlsx.read(Path.of(file[0])).value().isPresent();
      LogManager.getLogger("host").error("after the library, read: " + read);
    }
  }

  /** The command line, and then what a library would log. */
  static final class Shell {
    private Shell() {}

    public static void main(String[] file) {
      Main.quietLibraries();
      LogManager.getLogger("host").error("before the library");
      boolean read = Xlsx.read(Path.of(file[0])).value().isPresent();
      LogManager.getLogger("host").error("after the library, read: " + read);
    }
  }

  private static List<String> errors(Class<?> program, String... settings)
      throws IOException, InterruptedException {
    List<String> command = Stream.of(
            Stream.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()),
            Stream.of(settings),
            Stream.of("-Xmx256m", "-cp", System.getProperty("java.class.path")),
            Stream.of(program.getName(), "demo-data/birch-court.xlsx"))
        .flatMap(it -> it)
        .toList();
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(said).isZero();
    return said.lines().filter(line -> line.contains("the library")).toList();
  }

  @Test
  void a_host_programs_lines_are_all_logged() throws IOException, InterruptedException {
    assertThat(errors(Host.class))
        .hasSize(2)
        .anyMatch(line -> line.endsWith("before the library"))
        .anyMatch(line -> line.endsWith("after the library, read: true"));
  }

  @Test
  void the_command_line_is_quiet_unless_it_is_asked_to_log()
      throws IOException, InterruptedException {
    assertThat(errors(Shell.class)).isEmpty();
    assertThat(errors(Shell.class, "-Dorg.apache.logging.log4j.simplelog.level=ERROR"))
        .hasSize(2);
  }

  /** Files at the root of a jar speak for every program that has the jar on its path. */
  @Test
  void the_library_has_no_settings_for_other_libraries() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/resources"))) {
      assertThat(files
              .filter(Files::isRegularFile)
              .map(Path.of("src/main/resources")::relativize)
              .filter(it -> !it.startsWith("squaresheet") && !it.startsWith("META-INF/maven")))
          .isEmpty();
    }
  }
}
