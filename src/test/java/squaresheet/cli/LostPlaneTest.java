package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import squaresheet.binding.FieldNotes;
import squaresheet.binding.FieldSheet;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Plane;
import squaresheet.roof.Roof;

/** One refused plane costs that plane's row and nothing else. */
class LostPlaneTest {

  private static final Path DEMO = Path.of("demo-data/tape-sheet.csv");

  @TempDir
  Path folder;

  private static Read<FieldNotes> read(String csv) {
    return FieldSheet.read(csv, "tape.csv", Locale.US);
  }

  /** The demo sheet with a pitch that nobody can read in the row of that plane. */
  private static String spoilt(String plane) throws IOException {
    return Files.readString(DEMO)
        .lines()
        .map(line -> line.startsWith(plane + ",")
            ? line.replaceFirst("6/12|6:12|6 on 12|26.57°|3 in 12", "smudge")
            : line)
        .reduce("", (one, other) -> one + other + "\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Front", "Back", "Wing left", "Wing right", "Wing end", "Porch"})
  void every_other_row_and_edge_stays(String lost) throws IOException {
    Read<FieldNotes> whole = read(Files.readString(DEMO));
    Read<FieldNotes> spoilt = read(spoilt(lost));
    FieldNotes notes = spoilt.value().orElseThrow();
    assertThat(notes.unread())
        .extracting(unread -> unread.written().get(0))
        .as("the refused plane, and the row of the demo that nobody can read")
        .containsExactlyInAnyOrder(lost, "Skylight?");

    Read<Roof> before = Roof.resolve(whole.value().orElseThrow().roof());
    Read<Roof> after = Roof.resolve(notes.roof());
    assertThat(after.findings()).extracting(Finding::isError).doesNotContain(true);
    for (Plane plane : after.value().orElseThrow().planes()) {
      Plane same = before.value().orElseThrow().plane(plane.id()).orElseThrow();
      assertThat(sides(plane)).as("every side").isEqualTo(sides(same));
      assertThat(plane.openings()).as("every opening").isEqualTo(same.openings());
    }
    List<String> openings = notes.roof().lost().stream()
        .flatMap(it -> it.openings().stream())
        .map(it -> it.id())
        .toList();
    assertThat(openings).isEqualTo(lost.equals("Back") ? List.of("Chimney") : List.of());
  }

  private static List<String> sides(Plane plane) {
    return plane.sides().stream().map(side -> side.kind() + " " + side.drawn()).toList();
  }

  @Test
  void the_ridge_that_a_neighbour_measured_counts_whole() throws IOException {
    Roof roof =
        Roof.resolve(read(spoilt("Back")).value().orElseThrow().roof()).value().orElseThrow();
    assertThat(roof.length(EdgeKind.RIDGE).inches())
        .as("44 ft 0 1/2 in of Front by the tape, and the wing's 14 ft, by hand")
        .isEqualTo(12 * 44 + 0.5 + 12 * 14);
  }

  @Test
  void its_openings_stand_in_the_workbook_and_come_back() throws IOException {
    Path book = folder.resolve("job.xlsx");
    Path sheet = Files.writeString(folder.resolve("tape.csv"), spoilt("Back"));
    Ran.of("import", sheet.toString(), "--company", "demo-data", "-o", book.toString());
    Ran verified = Ran.of("verify", book.toString());
    assertThat(verified.out()).doesNotContain("[value-off-model]", "[error-value]");
    assertThat(verified.exit()).isEqualTo(3);
  }
}
