package squaresheet.courses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

class EaveWanderTest {

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # down    | within | source
        7 1/2"  | true   | overhang 1/4 in, the least; common practice, no source
        7 9/16" | false  | overhang 3/16 in: 1/16 short
        6 3/4"  | true   | overhang 1 in, the most; common practice, no source
        6 11/16"| false  | overhang 1 1/16 in: 1/16 long
      """)
  void the_limits_themselves_are_allowed(Length down, boolean within, String source) {
    assertThat(wander(new EaveWander.Reading("left", down)).isWithin())
        .as(source)
        .isEqualTo(within);
  }

  @Test
  void the_worst_station_is_named_with_what_to_do() {
    EaveWander wander = wander(
        new EaveWander.Reading("left rake", Length.parse("7\"")),
        new EaveWander.Reading("middle", Length.parse("7 5/8\"")),
        new EaveWander.Reading("right rake", Length.parse("7 1/4\"")));
    assertThat(wander.show(Graduation.SIXTEENTH))
        .isEqualTo(
            "overhang at middle is 1/8\", but must be 1/4\" to 1\"; move the line 3/16\" down");
  }

  @Test
  void an_eave_that_wanders_more_than_the_limits_is_not_cured_by_moving_the_line() {
    EaveWander wander = wander(
        new EaveWander.Reading("left rake", Length.parse("6 1/2\"")),
        new EaveWander.Reading("right rake", Length.parse("7 1/2\"")));
    assertThat(wander.show(Graduation.SIXTEENTH))
        .isEqualTo(
            "overhang at left rake is 1 1/4\", but must be 1/4\" to 1\"; no straight line keeps every station"
                + " inside: straighten the edge metal first");
  }

  @Test
  void within_its_limits_the_station_nearest_to_one_is_named() {
    EaveWander wander = wander(
        new EaveWander.Reading("left rake", Length.parse("7\"")),
        new EaveWander.Reading("right rake", Length.parse("7 3/8\"")));
    assertThat(wander.show(Graduation.SIXTEENTH))
        .isEqualTo(
            "overhang is within its limits at every station, nearest to one at right rake: 3/8\"");
  }

  private static EaveWander wander(EaveWander.Reading... readings) {
    return new EaveWander(Length.parse("7 3/4\""), EaveWander.Limits.standard(), List.of(readings));
  }
}
