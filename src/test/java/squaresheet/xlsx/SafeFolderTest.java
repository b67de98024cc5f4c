package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;

/** A set of files is there whole or not at all, and nothing that is not ours goes away with it. */
class SafeFolderTest {

  private static final String LIST = "list-of-papers.txt";

  @TempDir
  Path folder;

  private Path origin;
  private Path papers;

  @BeforeEach
  void place() throws IOException {
    origin = Files.writeString(folder.resolve("job.xlsx"), "");
    papers = folder.resolve("drawings");
  }

  private static Map<String, byte[]> files(String text, String... names) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (String name : names) {
      files.put(name, (text + " " + name).getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }

  private Read<SafeFolder.SavedSet> save(Map<String, byte[]> files, Existing existing) {
    return SafeFolder.save(papers, "lane", origin, files, existing);
  }

  /** Every file under a folder with what is in it, lists aside. */
  private static Map<String, String> contents(Path folder) throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (!file.endsWith(LIST)) {
          contents.put(folder.relativize(file).toString(), Files.readString(file));
        }
      }
    }
    return contents;
  }

  @Test
  void a_set_drawn_again_takes_the_place_of_the_one_before() throws IOException {
    save(files("old", "1.svg", "2.svg", "3.svg"), Existing.REFUSE);
    Read<SafeFolder.SavedSet> refused = save(files("new", "1.svg"), Existing.REFUSE);
    assertThat(refused.findings())
        .extracting(it -> it.info().id())
        .containsExactly("file-is-there");
    assertThat(contents(papers)).hasSize(3).containsValue("old 1.svg");
    save(files("new", "1.svg", "4.svg"), Existing.KEEP_COPY);
    assertThat(contents(papers))
        .isEqualTo(Map.of("lane/1.svg", "new 1.svg", "lane/4.svg", "new 4.svg"));
  }

  @Test
  void what_was_changed_or_is_not_ours_stays() throws IOException {
    save(files("old", "1.svg", "2.svg"), Existing.REFUSE);
    Path lane = papers.resolve("lane");
    Files.writeString(lane.resolve("1.svg"), "mine 1");
    Files.writeString(lane.resolve("2.svg"), "mine 2");
    Files.writeString(lane.resolve("4.svg"), "mine 4");
    SafeFolder.SavedSet saved =
        save(files("new", "1.svg", "4.svg"), Existing.KEEP_COPY).value().orElseThrow();
    assertThat(saved.kept()).containsExactly("1 (previous 1).svg", "4 (previous 1).svg");
    assertThat(saved.left()).containsExactly("2.svg");
    assertThat(contents(lane))
        .isEqualTo(Map.of(
            "1.svg", "new 1.svg",
            "1 (previous 1).svg", "mine 1",
            "2.svg", "mine 2",
            "4.svg", "new 4.svg",
            "4 (previous 1).svg", "mine 4"));
  }

  @Test
  void a_link_in_the_place_of_a_file_of_ours_is_not_followed() throws IOException {
    save(files("old", "1.svg"), Existing.REFUSE);
    Path mine = Files.writeString(folder.resolve("mine.svg"), "old 1.svg");
    Path link = papers.resolve("lane/1.svg");
    Files.delete(link);
    Files.createSymbolicLink(link, mine);
    save(files("new", "2.svg"), Existing.KEEP_COPY);
    assertThat(mine).hasContent("old 1.svg");
    assertThat(link).isSymbolicLink();
  }

  /** A name longer than any file system takes fails when all files before it are written, as a full disk does. */
  @Test
  void a_set_that_cannot_be_written_whole_changes_nothing() throws IOException {
    Map<String, byte[]> files = files("new", "1.svg", "2.svg", "x".repeat(300));
    assertThat(save(files, Existing.REFUSE).value()).isEmpty();
    assertThat(contents(folder)).isEqualTo(Map.of("job.xlsx", ""));
    save(files("old", "1.svg", "3.svg"), Existing.REFUSE);
    Map<String, String> before = contents(folder);
    Read<SafeFolder.SavedSet> failed = save(files, Existing.KEEP_COPY);
    assertThat(failed.findings())
        .extracting(Finding::says)
        .allMatch(it -> it.contains("nothing was changed"));
    assertThat(contents(folder)).isEqualTo(before);
    assertThat(names(papers)).containsExactly("lane");
  }

  @Test
  void a_swap_that_fails_half_way_is_taken_back() throws IOException {
    save(files("old", "1.svg", "2.svg", "3.svg"), Existing.REFUSE);
    Path lane = papers.resolve("lane");
    Files.writeString(lane.resolve("2.svg"), "mine");
    Map<String, String> before = contents(lane);
    String list = Files.readString(lane.resolve(LIST));
    Path fresh = Files.createDirectory(folder.resolve("fresh"));
    Path away = Files.createDirectory(folder.resolve("away"));
    Files.writeString(fresh.resolve("1.svg"), "new 1.svg");
    Files.writeString(fresh.resolve("2.svg"), "new 2.svg");
    SetList now = SetList.of("x", files("new", "1.svg", "2.svg", "missing.svg"));
    Swap swap = new Swap(lane, fresh, away);
    assertThatThrownBy(() -> swap.run(SetList.in(lane), now))
        .isInstanceOf(NoSuchFileException.class);
    assertThat(contents(lane)).isEqualTo(before);
    assertThat(lane.resolve(LIST)).hasContent(list);
    assertThat(names(away)).isEmpty();
  }

  @Test
  void sets_saved_at_once_stay_apart() {
    List<Path> origins = IntStream.range(0, 8)
        .mapToObj(number -> folder.resolve("job" + number + ".xlsx"))
        .toList();
    origins.parallelStream().forEach(from -> {
      try {
        Files.writeString(from, "");
      } catch (IOException failure) {
        throw new AssertionError(failure);
      }
      String own = from.getFileName().toString();
      assertThat(SafeFolder.save(papers, "lane", from, files(own, "1.svg"), Existing.REFUSE)
              .value())
          .isPresent();
    });
    List<String> texts = IntStream.rangeClosed(1, 8)
        .mapToObj(number -> papers.resolve(number == 1 ? "lane" : "lane-" + number))
        .map(lane -> assertDoesRead(lane.resolve("1.svg")))
        .sorted()
        .toList();
    assertThat(texts)
        .isEqualTo(
            origins.stream().map(it -> it.getFileName() + " 1.svg").collect(Collectors.toList()));
  }

  private static String assertDoesRead(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException failure) {
      throw new AssertionError(failure);
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(it -> it.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void a_name_is_safe_on_every_system() {
    assertThat(SafeFolder.safeName("Alder Lane 14 / rear: \"Müller & Söhne\"..."))
        .isEqualTo("alder-lane-14-rear-müller-söhne");
    assertThat(SafeFolder.safeName("../../etc/passwd")).isEqualTo("etc-passwd");
    assertThat(SafeFolder.safeName("CON")).isEqualTo("con-");
    assertThat(SafeFolder.safeName("lpt1.svg")).isEqualTo("lpt1-svg");
    assertThat(SafeFolder.safeName(" .\u0007\ud800")).isEqualTo("unnamed");
    assertThat(SafeFolder.safeName("x".repeat(500))).hasSize(80);
  }

  @Property(tries = 300)
  void any_words_make_a_name_of_letters_digits_and_dashes(@ForAll String words) {
    String name = SafeFolder.safeName(words);
    assertThat(name).matches("[\\p{L}\\p{N}-]+").doesNotStartWith("-");
    assertThat(name.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(81);
    assertThat(SafeFolder.safeName(name)).isEqualTo(name);
  }
}
