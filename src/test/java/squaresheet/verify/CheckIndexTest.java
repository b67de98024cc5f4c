package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import squaresheet.finding.CheckInfo;

/** The list of checks in docs/checks/README.md is the list that the pass asks, with each check's own question. */
class CheckIndexTest {

  private static final Path PAGES = Path.of("docs/checks");
  private static final Path PAGE = PAGES.resolve("README.md");
  private static final Path CODE = Path.of("src/main/java/squaresheet/verify");
  private static final String MARK = "<!-- From here on written from the code. -->";

  /** A check's question is the first sentence above its class. */
  private static final Pattern QUESTION = Pattern.compile(
      "/\\*\\*((?:(?!\\*/).)*?\\?)(?:(?!\\*/).)*\\*/\\s*final class", Pattern.DOTALL);

  private static final Pattern LEAD = Pattern.compile("(?m)^(\\S.*?)\\.? \\*\\*([A-Z]+)\\*\\*");

  private static String question(Ask<?> ask) throws IOException {
    String name = ask.check().getClass().getSimpleName();
    Matcher found = QUESTION.matcher(Files.readString(CODE.resolve(name + ".java")));
    assertThat(found.find()).as("%s begins with a question", name).isTrue();
    return found
        .group(1)
        .replaceAll("\\s+\\*? ?", " ")
        .replaceAll("\\{@code ([^}]*)}", "`$1`")
        .strip();
  }

  private static String row(CheckInfo info, String question) {
    return "| [%s](%s.md) | %s | %s | %s |"
        .formatted(info.id(), info.id(), question, info.severity(), info.title());
  }

  private static List<String> group(CheckGroup group) throws IOException {
    List<String> lines = new ArrayList<>(List.of(
        "", "## " + group.name(), "", "| Check | Asks | Weight | Says |", "|---|---|---|---|"));
    for (Ask<?> ask : group.asks()) {
      lines.add(row(ask.check().info(), question(ask)));
    }
    return lines;
  }

  /** What is said where a sheet is read, a roof is put together or courses are laid out: pages without a check. */
  private static List<String> readers() throws IOException {
    Set<String> checks = Verify.checks().stream().map(CheckInfo::id).collect(Collectors.toSet());
    List<String> lines = new ArrayList<>(List.of(
        "",
        "## Said while a sheet is read, a roof is put together or courses are laid out",
        "",
        "| Said | Weight | Says |",
        "|---|---|---|"));
    Set<String> ids;
    try (Stream<Path> files = Files.list(PAGES)) {
      ids = files
          .map(file -> file.getFileName().toString().replace(".md", ""))
          .filter(id -> !id.equals("README") && !id.equals("retired") && !checks.contains(id))
          .collect(Collectors.toCollection(TreeSet::new));
    }
    for (String id : ids) {
      Matcher lead = LEAD.matcher(Files.readString(PAGES.resolve(id + ".md")));
      assertThat(lead.find()).as("%s.md says what it is and its weight", id).isTrue();
      lines.add("| [%s](%s.md) | %s | %s |".formatted(id, id, lead.group(2), lead.group(1)));
    }
    return lines;
  }

  private static String written() throws IOException {
    List<String> lines = new ArrayList<>();
    for (CheckGroup group : Checks.groups()) {
      lines.addAll(group(group));
    }
    lines.addAll(readers());
    return String.join("\n", lines) + "\n";
  }

  @Test
  void the_page_lists_every_check_with_its_question_weight_and_title() throws IOException {
    String page = Files.readString(PAGE);
    String head = page.substring(0, page.indexOf(MARK) + MARK.length()) + "\n";
    if (Boolean.getBoolean("squaresheet.rewrite.checks")) {
      Files.writeString(PAGE, head + written());
    }
    assertThat(Files.readString(PAGE)).isEqualTo(head + written());
  }

  @Test
  void every_group_has_a_name_of_its_own_and_at_least_one_check() {
    assertThat(Checks.groups()).extracting(CheckGroup::name).doesNotHaveDuplicates();
    assertThat(Checks.groups()).allMatch(group -> !group.asks().isEmpty());
  }

  @Test
  void a_heading_is_an_anchor_that_a_page_can_point_to() {
    assertThat(Checks.groups())
        .allMatch(group -> group.name().toLowerCase(Locale.ROOT).matches("[a-z ,:]+"));
  }
}
