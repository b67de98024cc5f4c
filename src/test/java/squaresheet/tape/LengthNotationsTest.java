package squaresheet.tape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.units.Length;

/** Every way in which people write a length, worked by hand: 24 ft 6 1/2 in = 294.5 in = 7480.3 mm. */
class LengthNotationsTest {

  private static final Where HERE = new Where.InLine("tape.csv", 4, "Eave");

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
      24' 6 1/2"
      24'-6 1/2"
      24'- 6 1/2"
      24' - 6 1/2"
      24'–6 1/2"
      24'6.5"
      24' 6.5
      24'6 1/2
      24'-6-1/2"
      24 ft 6 1/2 in
      24ft 6½in
      24 ft. 6 1/2 in.
      24 FT 6 1/2 IN
      24 feet 6 1/2 inches
      24 foot 6.5 inch
      24 feet, 6 1/2 inches
      24-6 1/2
      24–6½
      24—6 1/2
      24 - 6 1/2
      24 6 1/2
      24 6½
      24-6.5
      24-6 1/2"
      294.5"
      294 1/2 in
      294½"
      294-1/2"
      294.5 inches
      294.5 ins
      24.541667 ft
      24.541667'
      24’ 6 1/2”
      24′ 6½″
      24' 6½''
      24‘ 6 1⁄2“
      24′ 6 ¹⁄₂″
      24´ 6 1/2´´
      24 ft 6 1/2 in
      ２４' 6 1/2"
      7.4803 m
      7.4803m
      7.4803 M
      7.4803 metres
      7.4803 meters
      7480.3 mm
      7480.3mm
      7 480.3 mm
      7,480.3 mm
      748.03 cm
      748.03 centimetres
      +24' 6 1/2"
      """)
  void is_twenty_four_feet_six_and_a_half_inches(String text) {
    TapeReader reader = TapeReader.of(TapeUnit.FEET, Locale.US);
    assertThat(reader.length(text, HERE)).satisfies(LengthNotationsTest::isExactlyRead);
    TapeReader metric = TapeReader.of(TapeUnit.METRES, Locale.US);
    if (text.matches(".*[^\\d\\s½/.–—-].*")) {
      assertThat(metric.length(text, HERE)).satisfies(LengthNotationsTest::isExactlyRead);
    }
  }

  private static void isExactlyRead(Read<Length> read) {
    assertThat(read.findings()).isEmpty();
    assertThat(read.value()).contains(Length.parse("24' 6 1/2\""));
  }
}
