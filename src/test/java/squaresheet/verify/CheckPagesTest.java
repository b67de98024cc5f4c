package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import squaresheet.finding.CheckInfo;

/** Every check has a page, every page a check, and a check is called by its id. */
class CheckPagesTest {

  private static final Path PAGES = Path.of("docs/checks");
  private static final List<String> PARTS = List.of(
      "**Says**", "**Why it matters**", "**Put it right**", "**Silent when**", "**Source**");

  private static List<Ask<?>> asks() {
    return Stream.of(Checks.ofAnyWorkbook(), Checks.ofBoundBooks(), Checks.ofJobs())
        .<Ask<?>>flatMap(List::stream)
        .toList();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException("no page " + file, unreadable);
    }
  }

  private static Stream<Path> files(Path folder, String ending) {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(ending)).toList().stream();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Test
  void a_check_is_called_by_its_id() {
    for (Ask<?> ask : asks()) {
      String name = Arrays.stream(ask.check().info().id().split("-"))
          .map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
          .collect(Collectors.joining());
      assertThat(ask.check().getClass().getSimpleName()).isEqualTo(name);
    }
  }

  @Test
  void no_id_is_used_twice_or_after_it_was_retired() {
    List<String> ids = Verify.checks().stream().map(CheckInfo::id).toList();
    assertThat(ids).doesNotHaveDuplicates();
    String retired = read(PAGES.resolve("retired.md"));
    assertThat(ids).noneMatch(id -> retired.contains("`" + id + "`"));
  }

  @Test
  void every_check_has_a_page_with_its_weight_and_all_five_parts() {
    for (CheckInfo info : Verify.checks()) {
      assertThat(read(PAGES.resolve(info.id() + ".md")))
          .as(info.id())
          .startsWith("# " + info.id())
          .contains("**" + info.severity() + "**")
          .contains(PARTS);
    }
  }

  @Test
  void every_page_has_a_check_or_a_reader_that_speaks_under_its_id() {
    String sources = files(Path.of("src/main/java"), ".java")
        .map(CheckPagesTest::read)
        .collect(Collectors.joining());
    Set<String> orphans = files(PAGES, ".md")
        .map(file -> file.getFileName().toString().replace(".md", ""))
        .filter(id -> !id.equals("retired") && !id.equals("README"))
        .filter(id -> !sources.contains("\"" + id + "\""))
        .collect(Collectors.toCollection(TreeSet::new));
    assertThat(orphans).isEmpty();
  }
}
