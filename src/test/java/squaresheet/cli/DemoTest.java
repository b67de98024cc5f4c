package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo does what the README says of it. */
class DemoTest {

  @TempDir
  Path folder;

  @Test
  void imports_verifies_names_three_slips_and_gives_totals() throws IOException {
    Ran ran = Ran.of("demo", folder.toString());
    assertThat(ran.exit()).as(ran.all()).isZero();
    assertThat(ran.out())
        .contains("NOT TO BE ORDERED: opening Skylight? is missing", "[unread-row-not-answered]")
        .contains("Skylight?: left out on purpose; it is on the neighbour's roof")
        .contains("alder-lane.job.xlsx: 0 findings")
        .containsPattern("ERROR   alder-lane.planted.xlsx, Job!\\w+  \\[setting-not-allowed]")
        .containsPattern("ERROR   alder-lane.planted.xlsx, Planes!\\w+  \\[typed-over-formula]")
        .containsPattern("ERROR   alder-lane.planted.xlsx, Planes!\\w+  \\[formula-cleared-in-row]")
        .contains("alder-lane.planted.xlsx: 3 findings")
        .contains("total of 1 job: ", "withheld: alder-lane.planted.xlsx");
    assertThat(ran.out())
        .contains(
            "Takeoff!C7  Back: eave  (empty) -> 44",
            "and every formula makes what the model makes",
            "  Takeoff!N18  10 -> 0.1  [waste-typed-as-percent]: only one source says so",
            "2 cells put right; every formula shows its new value",
            "Takeoff!N18  10 -> 0.1  [waste-typed-as-percent]",
            "Takeoff!M7  6.5 -> =L7/100  [typed-over-formula]",
            "roof-form.corrected.xlsx: 0 findings");
    assertThat(ran.out()).contains(findingInReadme());
    assertThat(folder.resolve("drawings/alder-lane-house")).isDirectoryContaining("glob:**.svg");
    assertThat(folder.resolve("totals-withheld.csv")).exists();
  }

  /** The finding that the README shows, as it stands there. */
  private static String findingInReadme() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    int first = readme.indexOf("ERROR   alder-lane.planted.xlsx");
    return readme.substring(first, readme.indexOf("```", first));
  }
}
