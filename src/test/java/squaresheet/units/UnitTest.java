package squaresheet.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitTest {

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
      # as headed       | in one way     | kind
      feet              | ft             | LENGTH
      Lin ft            | ft             | LENGTH
      sq ft             | sq ft          | AREA
      SF                | sq ft          | AREA
      sq. ft.           | sq ft          | AREA
      ft²               | sq ft          | AREA
      ft2               | sq ft          | AREA
      ft^2              | sq ft          | AREA
      square feet       | sq ft          | AREA
      sq ft (plan)      | sq ft plan     | PLAN_AREA
      sq ft sloped      | sq ft sloped   | SLOPED_AREA
      roof sq ft        | sq ft sloped   | SLOPED_AREA
      m²                | m²             | AREA
      sq m              | m²             | AREA
      mm                | mm             | LENGTH
      square            | square         | SQUARES
      SQ                | square         | SQUARES
      squares           | square         | SQUARES
      bundles           | bundle         | BUNDLES
      rolls             | roll           | ROLLS
      boxes             | box            | BOXES
      pcs               | piece          | PIECES
      each              | piece          | PIECES
      sheets            | sheet          | SHEETS
      courses           | course         | COUNT
      $                 | $              | MONEY
      USD               | $              | MONEY
      $/bundle          | $/bundle       | RATE
      $ per bundle      | $/bundle       | RATE
      per bundle        | 1/bundle       | RATE
      sq ft/bundle      | sq ft/bundle   | RATE
      ft/piece          | ft/piece       | RATE
      hours             | hour           | HOURS
      hr/square         | hour/square    | RATE
      lbs               | lb             | WEIGHT
      %                 | %              | RATIO
      ratio             | ratio          | RATIO
      ft/ft             | ratio          | RATIO
      pitch             | pitch          | PITCH
      degrees           | degree         | ANGLE
      """)
  void every_spelling_has_one_form(String headed, String form, Unit.Kind kind) {
    Unit unit = Unit.parse(headed);
    assertThat(unit).hasToString(form);
    assertThat(unit.kind()).isEqualTo(kind);
    assertThat(Unit.parse(unit.toString())).isEqualTo(unit).hasSameHashCodeAs(unit);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # from | to     | factor         | source
      ft     | in     | 12             | definition
      yd     | ft     | 3              | definition
      m      | ft     | 3.280839895013 | 1/0.3048, international foot, exact
      square | sq ft  | 100            | definition of the roofing square
      square | m²     | 9.290304       | 100 x 0.3048^2, exact
      sq ft  | sq in  | 144            | definition
      kg     | lb     | 2.204622621849 | 1/0.45359237, international pound, exact
      %      | ratio  | 0.01           | definition
      $/roll | cents/roll | 100        | definition
      """)
  void converts_by_the_published_factor(String from, String to, double factor, String source) {
    assertThat(Unit.parse(from).factorTo(Unit.parse(to)))
        .as(source)
        .isCloseTo(factor, within(factor * 1e-12));
  }

  @Test
  void plan_and_sloped_areas_are_alike_in_measure_but_of_other_sides() {
    Unit plan = Unit.parse("sq ft plan");
    Unit sloped = Unit.parse("sq ft sloped");
    assertThat(plan).isNotEqualTo(sloped);
    assertThat(plan.isLike(sloped)).isTrue();
    assertThat(plan.isOtherSideOf(sloped)).isTrue();
    assertThat(plan.isOtherSideOf(Unit.parse("sq ft"))).isFalse();
  }

  @Test
  void units_cancel() {
    assertThat(Unit.parse("$/bundle").times(Unit.parse("bundle"))).hasToString("$");
    assertThat(Unit.parse("sq ft").over(Unit.parse("ft"))).hasToString("ft");
    assertThat(Unit.parse("ft").times(Unit.parse("ft"))).hasToString("sq ft");
    assertThat(Unit.parse("sq ft").squareRoot()).hasToString("ft");
    assertThatThrownBy(() -> Unit.parse("ft").factorTo(Unit.parse("lb")))
        .hasMessage("cannot turn ft into lb");
  }

  @Test
  void an_unknown_unit_is_refused_with_a_sentence() {
    assertThatThrownBy(() -> Unit.parse("furlong"))
        .hasMessage(
            "unit must read like ft, sq ft, square, bundle or $/bundle, but reads 'furlong'");
    assertThatThrownBy(() -> Unit.parse("$/sprocket"))
        .hasMessage("unit must read like ft, sq ft, square, bundle or $/bundle, but reads"
            + " 'sprocket' in '$/sprocket'");
  }

  @Test
  void a_number_is_shown_with_its_unit() {
    assertThat(Unit.parse("$/bundle").show("38.50")).isEqualTo("$38.50/bundle");
    assertThat(Unit.parse("ft").show("12")).isEqualTo("12 ft");
    assertThat(Unit.RATIO.show("0.1")).isEqualTo("0.1");
  }
}
