package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Angles and percents at a limit, from the field sheet to the price, the workbook and the totals. */
class PitchFiguresTest {

  @TempDir
  Path folder;

  private Ran imported(String pitch) {
    try {
      Path sheet = folder.resolve("tape.csv");
      Files.writeString(sheet, """
          Job name;Elm Row
          Unit for bare numbers;feet
          Eave overhang past the wall;5 in
          Layers to tear off;1

          Planes
          Plane;Shape;Eave;Up the slope;Pitch;Measured;Left edge;Top edge;Right edge
          Front;rectangle;44;20;%1$s;slope;rake;ridge / Back;rake
          Back;rectangle;44;20;%1$s;slope;rake;ridge / Front;rake

          Openings
          Opening;In plane;What;Width;Up the slope
          Vent;Back;skylight;2;2
          """.formatted(pitch));
      return Ran.of(
          "import",
          sheet.toString(),
          "--company",
          "demo-data",
          "--force",
          "-o",
          folder.resolve("job.xlsx").toString());
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static String price(Ran ran) {
    assertThat(ran.exit()).as(ran.all()).isZero();
    return ran.out()
        .lines()
        .filter(line -> line.startsWith("Price"))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # written | means | the limit beside it
      18.43°    | 4/12  | underlayment is doubled below
      26.56°    | 6/12  | the demo company's rates are dearer from there
      66.6%     | 8/12  | ice barrier reaches 36 in from there
      60.3°     | 21/12 | more nails above
      """)
  void a_rounded_figure_is_priced_as_the_pitch_it_was_rounded_from(
      String written, String means, String limit) {
    Ran ran = imported(written);
    assertThat(ran.out()).contains("NOTE", "[pitch-as-named]", "taken as ");
    assertThat(price(ran)).as(limit).isEqualTo(price(imported(means)));
  }

  /** The other side of the limit costs less with the demo company's prices, so these are the safe side. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # written | priced as | other side
      18°       | 3.9:12    | 4.1:12
      33%       | 3.96:12   | 4:12
      26°       | 6:12      | 5.9:12
      60°       | 21.01:12  | 21:12
      """)
  void a_whole_figure_is_priced_on_the_safe_side_and_asked_about(
      String written, String safe, String other) {
    Ran ran = imported(written);
    assertThat(ran.out())
        .contains("WARNING", "[pitch-near-limit]", "it is priced as " + safe + ", the safe side");
    assertThat(price(ran)).isEqualTo(price(imported(safe))).isNotEqualTo(price(imported(other)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"26.56°", "26°", "18°"})
  void the_workbook_passes_with_the_pitch_that_was_taken(String written) {
    imported(written);
    String book = folder.resolve("job.xlsx").toString();
    assertThat(Ran.of("verify", book).out()).contains("job.xlsx: 0 findings");
  }

  /** 17 % may be 1.98:12, where shingles are not laid: the totals wait until the pitch is measured. */
  @Test
  void a_pitch_that_may_be_too_flat_for_shingles_is_withheld() {
    Ran ran = imported("17%");
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out()).contains("[pitch-near-limit]", "too flat for shingles, none ordered");
    assertThat(imported("16.7%").exit()).isZero();
  }
}
