package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/**
 * Files with random damage: whatever it is, reading and editing give a workbook or a sentence. Short in the build, ten minutes
 * with the profile {@code fuzz}; {@code -Dsquaresheet.seed=…} repeats a run.
 */
class FuzzTest {

  private static final int LEAST = 90;

  @TempDir
  Path folder;

  @Test
  void damage_of_any_kind_costs_at_most_a_sentence() throws IOException {
    List<Map<String, byte[]>> books = List.of(rich(), Everything.parts());
    Random random = new Random(Long.getLong("squaresheet.seed", 20_260_101L));
    long end =
        System.nanoTime() + TimeUnit.SECONDS.toNanos(Long.getLong("squaresheet.fuzz.seconds", 0));
    for (int i = 0; i < LEAST || System.nanoTime() < end; i++) {
      Map<String, byte[]> parts = books.get(i % books.size());
      byte[] damaged =
          i % 3 == 0 ? flip(ZipParts.zip(parts), random) : ZipParts.zip(damage(parts, random));
      Path file = Files.write(folder.resolve("damaged.xlsx"), damaged);
      use(file, random.nextInt(OneEdit.values().length + 1));
    }
  }

  private Map<String, byte[]> rich() throws IOException {
    return ZipParts.of(Files.write(folder.resolve("whole.xlsx"), Rich.workbook()));
  }

  private static byte[] flip(byte[] whole, Random random) {
    byte[] damaged = whole.clone();
    for (int n = damaged.length == 0 ? -1 : random.nextInt(8); n >= 0; n--) {
      damaged[random.nextInt(damaged.length)] = (byte) random.nextInt();
    }
    return damaged;
  }

  private static Map<String, byte[]> damage(Map<String, byte[]> parts, Random random) {
    Map<String, byte[]> damaged = new TreeMap<>(parts);
    List<String> names = new ArrayList<>(parts.keySet());
    String name = names.get(random.nextInt(names.size()));
    byte[] part = parts.get(name);
    switch (random.nextInt(5)) {
      case 0 -> damaged.remove(name);
      case 1 -> damaged.put(name, Arrays.copyOf(part, random.nextInt(part.length + 1)));
      case 2 -> damaged.put(name, parts.get(names.get(random.nextInt(names.size()))));
      case 3 -> damaged.put(name, flip(part, random));
      default -> damaged.put(name, moved(part, random));
    }
    return damaged;
  }

  /** Copies a stretch of the part over another. */
  private static byte[] moved(byte[] part, Random random) {
    byte[] damaged = part.clone();
    int length = random.nextInt(Math.min(40, part.length) + 1);
    int from = random.nextInt(part.length - length + 1);
    int to = random.nextInt(part.length - length + 1);
    System.arraycopy(part, from, damaged, to, length);
    return damaged;
  }

  private void use(Path file, int edit) {
    Read<Workbook> read = Xlsx.read(file);
    assertThat(read.value().isPresent() || !read.findings().isEmpty()).isTrue();
    read.findings().forEach(FuzzTest::sentence);
    read.value().ifPresent(it -> it.sheets().forEach(FuzzTest::walk));
    Read<Saved> saved =
        Xlsx.edit(file, edits(edit), folder.resolve("edited.xlsx"), Existing.REPLACE);
    saved.findings().forEach(FuzzTest::sentence);
    assertThat(saved.value().isPresent() || !saved.findings().isEmpty()).isTrue();
  }

  /** One edit by its number, or all of them by the number behind the last. */
  private static List<Edit> edits(int number) {
    OneEdit[] all = OneEdit.values();
    return number < all.length
        ? all[number].alone()
        : Arrays.stream(all).flatMap(each -> each.alone().stream()).toList();
  }

  private static void walk(Sheet sheet) {
    assertThat(sheet.cells().filter(it -> it.cell().formula().equals("never")).count())
        .isZero();
  }

  private static void sentence(Finding finding) {
    assertThat(finding.says()).isNotBlank().doesNotContain("Exception").doesNotContain("\n");
  }
}
