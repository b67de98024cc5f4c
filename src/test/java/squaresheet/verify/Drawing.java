package squaresheet.verify;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A sheet drawn in {@code src/test/cases/checks/<check-id>.txt}, behind a line {@code # what it shows}.
 *
 * @param check the file it stands in: the check it was drawn for
 * @param title what it shows
 * @param text the drawing
 */
record Drawing(String check, String title, String text) {

  private static final Path CASES = Path.of("src/test/cases/checks");

  /** All drawings of all checks. */
  static Stream<Drawing> all() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      List<String> checks = files
          .map(file -> file.getFileName().toString().replace(".txt", ""))
          .sorted()
          .toList();
      return checks.stream().flatMap(check -> of(check).stream());
    }
  }

  /** The drawings of one check. */
  static List<Drawing> of(String check) {
    Path file = CASES.resolve(check + ".txt");
    try {
      return Arrays.stream(Files.readString(file).split("(?m)^# "))
          .filter(part -> !part.isBlank())
          .map(part -> new Drawing(
              check, part.lines().findFirst().orElse(""), part.substring(part.indexOf('\n') + 1)))
          .toList();
    } catch (IOException unreadable) {
      throw new AssertionError("every check has drawings, but there is no " + file, unreadable);
    }
  }

  /** Whether nothing is to be said about it. */
  boolean isClean() {
    return !text.contains("<- ");
  }

  DrawnBook book() {
    return DrawnBook.of(text);
  }
}
