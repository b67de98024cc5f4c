package squaresheet.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.reference.Reference;
import squaresheet.reference.Reference.Row;
import squaresheet.units.Ratio;

/** The limits of the standard rulebook against the published ones, and both sides of each. */
class LimitsTest {

  private static final Map<String, Row> PUBLISHED = Stream.of(
          "code-requirements.csv", "material-facts.csv")
      .flatMap(table -> Reference.rows(table).stream())
      .collect(Collectors.toMap(Row::id, Function.identity()));

  @TestFactory
  Stream<DynamicTest> a_setting_with_a_published_source_has_the_published_number() {
    return Rulebook.standard().settings().stream()
        .filter(rule -> rule.holds() == Rule.Holds.NUMBER && PUBLISHED.containsKey(rule.source()))
        .map(rule -> dynamicTest(rule.name() + " " + rule.source(), () -> {
          Row row = PUBLISHED.get(rule.source());
          assertThat(stated(row)).as(row.quantity()).contains(Double.valueOf(rule.formula()));
        }));
  }

  /** The number of a row as it may be used: as it is, as percent, as the lower half of a ratio, or said beside it. */
  private static List<Double> stated(Row row) {
    double scale = row.unit().equals("percent") ? 0.01 : 1;
    Stream<Double> beside =
        Arrays.stream(Row.numbers(row.inputs() + " " + row.notes())).boxed();
    Stream<Double> all = Stream.concat(Stream.of(row.number()), beside)
        .flatMap(one -> Stream.of(one, Math.round(one * scale * 1e6) / 1e6));
    Stream<Double> lower =
        row.number() < 1 ? Stream.of((double) Math.round(1 / row.number())) : Stream.empty();
    return Stream.concat(all, lower).toList();
  }

  @Test
  void every_source_is_a_published_row_or_says_what_it_is() {
    List<String> plain = List.of("arithmetic", "common practice", "pitch-factors", "WE-LHIP-30LB");
    assertThat(Rulebook.standard().rules().stream()
            .filter(rule -> rule.kind() != Rule.Kind.GIVEN)
            .map(Rule::source)
            .filter(source -> !PUBLISHED.containsKey(source) && !plain.contains(source)))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # pitch | shingled | layers | source
      1.99    | 0        | 2      | IRC R905.2.2: not below 2:12 (CR-001)
      2       | 100      | 2      | IRC R905.2.2: double from 2:12 (CR-002)
      3.99    | 100      | 2      | IRC R905.2.2: up to 4:12 (CR-003)
      4       | 100      | 1      | IRC R905.2.2: single at 4:12 and steeper (CR-003)
      """)
  void low_slopes_double_the_underlayment_and_refuse_shingles(
      double rise, double area, double layers, String source) {
    Names names = Jobs.plane(Names.none(), "A", rise, 10, 10).with("vent_choice", "none");
    assertThat(Jobs.number(names, "shingled_area")).as(source).isEqualTo(area);
    assertThat(Jobs.number(names, "underlayment_layers")).as(source).isEqualTo(layers);
    assertThat(Takeoff.of(Rulebook.standard(), names, Jobs.PRODUCTS).isClean()).isEqualTo(area > 0);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # pitch | edition | overhang | reach in  | source
      0       | 2021    | 12       | 36        | (12 + 24) x 1: CR-013, by hand
      5       | 2021    | 12       | 39        | 36 x 13/12, triangle 5-12-13: CR-013, by hand
      9       | 2021    | 0        | 36        | 24 x 15/12 = 30, but 36 from 8:12 on: CR-014
      9       | 2015    | 0        | 36        | the same in 2015: CR-014
      9       | 2012    | 0        | 30        | not before 2015: CR-014
      9       | 2024    | 0        | 30        | removed in 2024: CR-016
      9       | 2021    | 12       | 45        | 36 x 15/12 governs over 36: CR-013
      7.99    | 2021    | 0        | 28.833321 | 24 x sqrt(1 + (7.99/12)^2), below 8:12: CR-015
      8       | 2021    | 0        | 36        | 24 x 1.2019 = 28.8, but 36 at 8:12: CR-015
      """)
  void ice_barrier_reaches_inside_the_wall_measured_level(
      double rise, double edition, double overhang, double reach, String source) {
    Names names = Jobs.plane(Names.none(), "A", rise, 10, 20)
        .with("code_edition", edition)
        .with("eave_overhang", overhang);
    assertThat(Jobs.number(names, "ice_reach")).as(source).isCloseTo(reach, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # reach at 0:12 | rows | 36 in wide, side lap 3.5 in, by hand
      35.99           | 1    | one width
      36              | 1    | just one width
      36.01           | 2    | up to 36 + 32.5 = 68.5
      68.5            | 2    | just two
      68.51           | 3    | and a third
      """)
  void ice_barrier_comes_in_whole_rows(double reach, double rows, String source) {
    Names names = Jobs.plane(Names.none(), "A", 0, 10, 20).with("eave_overhang", reach - 24);
    assertThat(Jobs.number(names, "ice_rows")).as(source).isEqualTo(rows);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # height ft | rows | reach 36 x 13/12 = 39 in at 5:12, 36 in wide, side lap 3.5 in, by hand
      2.5         | 1    | a porch of 30 in takes one row, though the reach asks for two
      3           | 1    | one width is its whole height
      3.01        | 2    | a little more is left
      20          | 2    | the reach: 36 + 32.5 = 68.5
      """)
  void ice_barrier_ends_at_the_top_of_a_short_plane(double height, double rows, String source) {
    Names names = Jobs.plane(Names.none(), "A", 5, 10, height);
    assertThat(Jobs.number(names, "ice_rows")).as(source).isEqualTo(rows);
  }

  @Test
  void ice_barrier_goes_on_past_a_pitch_break() {
    // the porch of 30 in goes on at another pitch, so the reach of 39 in stays: by hand
    Names porch = Jobs.plane(Names.none(), "A", 5, 10, 2.5);
    assertThat(Jobs.number(Jobs.edge(porch, "A", "pitch break", 10), "ice_rows"))
        .isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # choice | lined in valleys | speaks | source
      closed   | yes              | false  | a self-adhering sheet in place of the lining: CR-033
      closed   | no               | true   | lined with at least 36 in: CR-033
      open     | no               | false  | has its own lining: CR-030
      """)
  void a_closed_valley_is_lined(String choice, String lined, boolean speaks, String source) {
    Names names = Jobs.edge(Jobs.plane(Names.none(), "A", 6, 20, 10), "A", "valley", 12)
        .with("valley_choice", choice)
        .with("ice_in_valleys", lined);
    assertThat(spoken(names).contains("closed_valley_is_lined")).as(source).isEqualTo(speaks);
  }

  @Test
  void step_flashing_is_as_long_as_the_exposure_and_its_lap() {
    // 5 5/8 in and 2 in: common practice, no source
    Names walled = Jobs.edge(Jobs.plane(Names.none(), "A", 6, 20, 10), "A", "sidewall", 10);
    assertThat(spoken(walled)).doesNotContain("step_flashing_is_long_enough");
    assertThat(spoken(walled.with("step_flashing_lap", 2.5)))
        .contains("step_flashing_is_long_enough");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # pitch | pattern   | nails each | source
      21      | usual     | 4          | CR-023, CR-025: above 21:12 only
      21.01   | usual     | 6          | CR-025
      6       | high wind | 6          | product
      """)
  void steep_planes_take_the_high_wind_pattern(
      double rise, String pattern, double each, String source) {
    Names names = Jobs.plane(Names.none(), "A", rise, 10, 10).with("nail_pattern", pattern);
    assertThat(Jobs.number(names, "plane_nails") / Jobs.number(names, "plane_shingles"))
        .as(source)
        .isCloseTo(each, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # setting       | kept | broken | limit
      layers_left     | 1    | 2      | layers_are_allowed
      above_deck      | 0.74 | 0.75   | nail_is_long_enough
      attic_typed     | 100  | 9000   | ridge_is_long_enough
      least_side_lap  | 2    | 3      | side_lap_is_enough
      least_end_lap   | 4    | 6      | end_lap_is_enough
      """)
  void a_limit_speaks_just_past_it(String setting, double kept, double broken, String limit) {
    Names names = Jobs.plane(Names.none(), "A", 6, 20, 10);
    assertThat(spoken(names.with(setting, kept))).doesNotContain(limit);
    assertThat(spoken(names.with(setting, broken))).contains(limit);
  }

  @Test
  void a_waste_rate_past_a_half_is_no_rate_wherever_it_comes_from() {
    Names names = Jobs.plane(Names.none(), "A", 6, 20, 10).with("waste_choice", "simulated");
    assertThat(spoken(names.withSimulatedWaste(Ratio.of(0.5)))).doesNotContain("waste_is_a_ratio");
    assertThat(spoken(names.withSimulatedWaste(Ratio.of(0.51)))).contains("waste_is_a_ratio");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # divisor | edition | share | balanced | source
      150       | 2021    | 0.9   | true     | the base rule asks for no share: CR-042
      300       | 2021    | 0.4   | true     | 40 to 50 percent: CR-044
      300       | 2021    | 0.39  | false    | CR-044
      300       | 2012    | 0.51  | false    | CR-045
      300       | 2009    | 0.51  | true     | 50 to 80 percent before: CR-047
      300       | 2009    | 0.49  | false    | CR-047
      """)
  void the_lesser_vent_area_holds_only_with_its_conditions(
      double divisor, double edition, double share, boolean balanced, String source) {
    Names names = Jobs.plane(Names.none(), "A", 6, 20, 10)
        .with("vent_divisor", divisor)
        .with("code_edition", edition)
        .with("exhaust_share", share);
    assertThat(spoken(names).contains("exhaust_is_balanced")).as(source).isEqualTo(!balanced);
  }

  private static List<String> spoken(Names names) {
    return Takeoff.of(Rulebook.standard(), names, Jobs.PRODUCTS).findings().stream()
        .map(finding -> finding.where().toString().replaceFirst(".*: ", ""))
        .toList();
  }

  @Test
  void a_wide_chimney_asks_for_a_cricket() {
    Names plane = Jobs.plane(Names.none(), "A", 6, 20, 10);
    assertThat(spoken(Jobs.edge(plane, "A", "opening back", 2.5, "chimney")))
        .doesNotContain("cricket_is_built");
    assertThat(spoken(Jobs.edge(plane, "A", "opening back", 2.51, "chimney")))
        .contains("cricket_is_built");
  }

  @Test
  void a_limit_says_what_it_is_and_what_it_was_asked_of() {
    Names names = Jobs.plane(Names.none(), "Porch", 1.5, 10, 10);
    assertThat(Takeoff.of(Rulebook.standard(), names, Jobs.PRODUCTS).findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .containsExactly(
            "plane Porch: slope_is_enough: shingles must not be laid below the minimum slope of the code and of "
                + "the product: pitch_rise is 1.5 pitch, least_slope is 2 pitch, shingle_minimum_slope is 2 pitch (CR-001)");
  }
}
