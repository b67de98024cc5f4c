package squaresheet.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds what is shipped beside the jar: named in the page of dependencies, reached by a call, and licensed in the open. */
class LibrariesTest {

  private static final Path LIB = Path.of("target/lib");

  /** Loaded by JLine by its name, so that no class points at it. */
  private static final String BY_NAME = "jline-native";

  @Test
  void the_page_of_dependencies_names_exactly_what_is_shipped() throws IOException {
    String page = Files.readString(Path.of("docs/dependencies.md"));
    String table = page.substring(page.indexOf("| Jar |"), page.indexOf("Left out"));
    assertThat(found("(?m)^\\| ([A-Za-z][\\w.-]*-\\d[\\w.]*) \\|", table)).isEqualTo(shipped());
  }

  @Test
  void what_is_shipped_is_what_a_call_can_reach() throws IOException {
    Set<String> reached = found("-> \\S*?/?lib/([^/\\s]+)\\.jar", classesReached());
    Set<String> byName = shipped().stream()
        .filter(jar -> jar.startsWith(BY_NAME))
        .collect(Collectors.toCollection(TreeSet::new));
    byName.addAll(reached);
    assertThat(byName).isEqualTo(shipped());
  }

  @Test
  void the_licence_and_the_notice_stand_in_the_jar_as_in_the_docs() throws IOException {
    for (String name : List.of("LICENSE", "NOTICE")) {
      assertThat(Files.readString(Path.of("target/classes/META-INF", name), StandardCharsets.UTF_8))
          .isEqualTo(Files.readString(Path.of("docs", name)));
    }
    assertThat(Path.of("docs/LICENSE"))
        .content()
        .contains("Apache License", "Version 2.0, January 2004", "END OF TERMS AND CONDITIONS");
  }

  private static Set<String> shipped() throws IOException {
    assertThat(LIB).as("filled by mvn process-test-classes").isDirectory();
    try (Stream<Path> files = Files.list(LIB)) {
      return files
          .map(file -> file.getFileName().toString().replaceFirst("\\.jar$", ""))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  /** What the JDK's own tool says of every class that the program's classes lead to. */
  private static String classesReached() throws IOException {
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    ToolProvider.findFirst("jdeps")
        .orElseThrow()
        .run(
            out,
            out,
            "-v",
            "-R",
            "--multi-release",
            "17",
            "--ignore-missing-deps",
            "-cp",
            shipped().stream()
                .map(jar -> LIB.resolve(jar + ".jar").toString())
                .collect(Collectors.joining(File.pathSeparator)),
            "target/classes");
    return said.toString();
  }

  private static Set<String> found(String pattern, String text) {
    return Pattern.compile(pattern)
        .matcher(text)
        .results()
        .map((MatchResult match) -> match.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
