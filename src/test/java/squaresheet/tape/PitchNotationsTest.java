package squaresheet.tape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.units.Pitch;

/** Every way in which people write a pitch of six inches rise to the foot of run. */
class PitchNotationsTest {

  private static final Where HERE = new Where.InLine("tape.csv", 4, "Pitch");

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
      6/12
      6 / 12
      6⁄12
      6:12
      6 : 12
      06:12
      6 in 12
      6 IN 12
      6in12
      6 on 12
      6 over 12
      6 per 12
      6-12
      6–12
      6"
      6”
      6″
      6''
      6 in
      6 inches
      6" in 12"
      6"/12"
      6 in. in 12 in.
      6" per foot
      6 in/ft
      6/12 pitch
      pitch 6/12
      50%
      50 %
      50 percent
      1:2
      1 in 2
      125:250
      125/250
      125 mm / 250 mm
      6
      6.0
      +6
      """)
  void is_six_in_twelve(String text) {
    Read<Pitch> read = TapeReader.of(TapeUnit.FEET, Locale.US).pitch(text, HERE);
    assertThat(read.findings()).isEmpty();
    assertThat(read.value()).contains(Pitch.of(6));
  }

  /** Published angle of 6 in 12 to two decimals (table of slope angles, PF-AN-RO-06). */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      26.57°
      26.57 °
      26.57º
      26.57 deg
      26.57 deg.
      26.57deg
      26.57 degrees
      26.57 DEGREES
      """)
  void is_the_angle_of_six_in_twelve_and_taken_for_it(String text) {
    Read<Pitch> read = TapeReader.of(TapeUnit.FEET, Locale.US).pitch(text, HERE);
    assertThat(read.value()).contains(Pitch.of(6));
    assertThat(read.findings())
        .extracting(finding -> finding.says())
        .containsExactly(
            "pitch reads '" + text + "', which is 6:12 to its last digit; taken as 6:12");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
      4.5/12
      4 1/2 / 12
      4 1/2/12
      4½/12
      4½:12
      4-1/2 in 12
      4 1/2"
      4½
      4.5
      37.5%
      """)
  void is_four_and_a_half_in_twelve(String text) {
    Read<Pitch> read = TapeReader.of(TapeUnit.FEET, Locale.US).pitch(text, HERE);
    assertThat(read.findings()).isEmpty();
    assertThat(read.value()).contains(Pitch.parse("4.5:12"));
  }
}
