package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Content;
import squaresheet.xlsx.HostileWords;

/** A plane with a name that files break on goes through every command, and every file is one that others read. */
class HostileNamesTest {

  @TempDir
  Path folder;

  @Provide
  Arbitrary<String> words() {
    return HostileWords.any();
  }

  /** What a csv file in UTF-8 can hold of a name, with its quotes doubled. */
  private Path tape(String name) throws IOException {
    String sheet = Files.readString(Path.of("demo-data/tape-sheet.csv"))
        .lines()
        .filter(line -> !line.contains("about two foot"))
        .map(line -> line.replaceAll("(?<![\\p{L}])Back(?![\\p{L}])", name)
            .replace("Alder Lane house", "House " + name))
        .reduce("", (all, line) -> all + line + "\n");
    return Files.writeString(folder.resolve("tape.csv"), sheet);
  }

  private static void whole(Path book) throws IOException {
    HostileWords.parse(book);
    try (XSSFWorkbook other = new XSSFWorkbook(Files.newInputStream(book))) {
      assertThat(other.getNumberOfSheets()).isPositive();
    }
  }

  @Test
  void every_file_of_a_job_is_one_that_others_read() throws IOException {
    String name = "B\u000ba\u0007c\u001b[2Jk\ufffe";
    Path job = folder.resolve("job.xlsx");
    Ran imported =
        Ran.of("import", tape(name).toString(), "--company", "demo-data", "-o", job.toString());
    assertThat(imported.exit()).as(imported.all()).isZero();
    whole(job);
    Path marked = folder.resolve("marked.xlsx");
    assertThat(Ran.of("mark", job.toString(), "-o", marked.toString()).exit()).isZero();
    whole(marked);
    Workshop shop = new Workshop(folder);
    Ran drawn = shop.draw(job, "papers");
    assertThat(drawn.exit()).as(drawn.all()).isZero();
    for (String file : shop.files("papers")) {
      byte[] bytes = Files.readAllBytes(folder.resolve("papers").resolve(file));
      assertThat(new String(bytes, StandardCharsets.UTF_8))
          .as(file)
          .doesNotContain("\u001b", "\ufffe");
      if (file.endsWith(".svg")) {
        HostileWords.parse(file, bytes);
      }
    }
    Path totals = folder.resolve("totals.csv");
    assertThat(Ran.of("totals", job.toString(), "-o", totals.toString()).exit()).isZero();
    assertThat(Files.readString(totals))
        .contains("House B")
        .doesNotContain("\u001b", "\ufffe", "\u0007");
    assertThat(imported.all() + drawn.all())
        .as("no name steers a terminal")
        .doesNotContain("\u001b", "\u0007");
  }

  @Property(tries = 200)
  void a_csv_file_takes_any_words(@ForAll("words") String words) {
    String csv = Content.csv(
        List.of(words.replaceAll("\\R", " ")), List.of(List.of("name"), List.of(words)));
    assertThat(new String(csv.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8))
        .isEqualTo(csv);
    assertThat(csv.codePoints().filter(it -> it < ' ' && it != '\t' && it != '\n' && it != '\r'))
        .isEmpty();
    assertThat(Content.legible(csv)).isEqualTo(csv);
  }

  @Property(tries = 500)
  void what_is_spelled_reads_back(@ForAll("words") String words) {
    assertThat(Content.unspelled(Content.spelled(words))).isEqualTo(words);
    assertThat(Content.legible(Content.spelled(words))).isEqualTo(Content.spelled(words));
    assertThat(Content.legible(words)).hasSameSizeAs(words);
  }
}
