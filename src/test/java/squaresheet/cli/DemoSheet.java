package squaresheet.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;

/** The demo's tape sheet without the row that nobody can read, for jobs that are to pass. */
final class DemoSheet {

  private static final Path SOUND = written();

  private DemoSheet() {}

  /** A file of its own; its company lists are those of the demo. */
  static String sound() {
    return SOUND.toString();
  }

  private static Path written() {
    try {
      String sheet = Files.readAllLines(Path.of("demo-data/tape-sheet.csv")).stream()
          .filter(line -> !line.contains("about two foot"))
          .collect(Collectors.joining("\n", "", "\n"));
      Path folder = Files.createTempDirectory("demo");
      folder.toFile().deleteOnExit();
      for (String list : new String[] {"products", "prices", "rates", "terms"}) {
        Path copy = folder.resolve(list + ".csv");
        Files.copy(Path.of("demo-data", list + ".csv"), copy).toFile().deleteOnExit();
      }
      Path file = folder.resolve("tape-sheet.csv");
      file.toFile().deleteOnExit();
      return Files.writeString(file, sheet);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }
}
