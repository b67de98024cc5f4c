package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/**
 * Files with random damage: whatever it is, reading and editing give a workbook or a sentence. Short in the build; {@code
 * -Dsquaresheet.fuzz=20000} makes it long, {@code -Dsquaresheet.seed=…} repeats a run.
 */
class FuzzTest {

  @TempDir
  Path folder;

  @Test
  void damage_of_any_kind_costs_at_most_a_sentence() throws IOException {
    byte[] whole = Rich.workbook();
    Files.write(folder.resolve("whole.xlsx"), whole);
    Map<String, byte[]> parts = ZipParts.of(folder.resolve("whole.xlsx"));
    Random random = new Random(Long.getLong("squaresheet.seed", 20_260_101L));
    for (int i = 0; i < Integer.getInteger("squaresheet.fuzz", 90); i++) {
      byte[] damaged = i % 3 == 0 ? flip(whole, random) : ZipParts.zip(damage(parts, random));
      Path file = Files.write(folder.resolve("damaged.xlsx"), damaged);
      use(file);
    }
  }

  private static byte[] flip(byte[] whole, Random random) {
    byte[] damaged = whole.clone();
    for (int n = random.nextInt(8); n >= 0; n--) {
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
      case 1 -> damaged.put(name, java.util.Arrays.copyOf(part, random.nextInt(part.length + 1)));
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

  private void use(Path file) {
    Read<Workbook> read = Xlsx.read(file);
    assertThat(read.value().isPresent() || !read.findings().isEmpty()).isTrue();
    read.findings().forEach(FuzzTest::sentence);
    read.value().ifPresent(it -> it.sheets().forEach(FuzzTest::walk));
    Edit edit = new Edit.SetContent(Address.of("Planes", "B2"), new Content.Numeric(1));
    Read<Saved> saved =
        Xlsx.edit(file, List.of(edit), folder.resolve("edited.xlsx"), Existing.REPLACE);
    saved.findings().forEach(FuzzTest::sentence);
    assertThat(saved.value().isPresent() || !saved.findings().isEmpty()).isTrue();
  }

  private static void walk(Sheet sheet) {
    assertThat(sheet.cells().filter(it -> it.cell().formula().equals("never")).count())
        .isZero();
  }

  private static void sentence(Finding finding) {
    assertThat(finding.says()).isNotBlank().doesNotContain("Exception").doesNotContain("\n");
  }
}
