package squaresheet.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.formula.Value;

/** What a setting can be stands in one table; what is outside of it is said and counts as not typed. */
class SettingsTest {

  private static final Rulebook RULES = Rulebook.standard();

  private static Stream<Rule> numbers() {
    return RULES.settings().stream()
        .filter(rule -> rule.holds() == Rule.Holds.NUMBER && rule.choices().isEmpty());
  }

  private static Read<Map<String, Value>> judged(String name, double number) {
    return Settings.judged(RULES, Map.of(name, Value.of(number)));
  }

  private static List<String> says(Read<?> read) {
    return read.findings().stream().map(Finding::says).toList();
  }

  @Example
  void every_number_among_the_settings_has_a_range_in_its_unit_that_takes_its_default() {
    assertThat(numbers()).allSatisfy(rule -> {
      SettingRange range = rule.range().orElseThrow(() -> new AssertionError(rule.name()));
      assertThat(range.unit().isEmpty() ? "ratio" : range.unit())
          .as(rule.name())
          .isEqualTo(rule.unit().toString());
      assertThat(Settings.judged(RULES, Map.of(rule.name(), rule.usual())).isClean())
          .isTrue();
    });
  }

  @Example
  void every_range_is_of_a_setting_and_says_where_it_is_from() throws IOException {
    String keys = Files.readString(Path.of("src/test/cases/reference/code-requirements.csv"));
    assertThat(SettingRange.all().keySet())
        .allMatch(name -> name.equals("tape_tolerance")
            || RULES.rule(name).filter(rule -> rule.range().isPresent()).isPresent());
    assertThat(SettingRange.all().values()).allSatisfy(range -> {
      assertThat(range.least()).isLessThan(range.most());
      assertThat(keys + "\ncommon practice,\narithmetic,").contains("\n" + range.source() + ",");
    });
    assertThat(SettingRange.all().values().stream()
            .map(SettingRange::notOver)
            .filter(name -> !name.isEmpty()))
        .allMatch(name -> SettingRange.of(name).isPresent());
  }

  @Provide
  Arbitrary<Rule> settings() {
    return Arbitraries.of(numbers().toList());
  }

  /** At both ends it counts, past them and between whole numbers it is said and does not. */
  @Property(tries = 300)
  void a_number_counts_or_is_said(@ForAll("settings") Rule rule, @ForAll("shares") double share) {
    SettingRange range = rule.range().orElseThrow();
    double number = range.least() + share * (range.most() - range.least());
    boolean whole = !range.isWhole() || Math.abs(number - Math.rint(number)) <= 1e-9;
    boolean meant = (share >= 0 && share <= 1 && whole) || (number == 0 && range.isZeroToo());
    Read<Map<String, Value>> read = judged(rule.name(), number);
    assertThat(read.findings().stream()
            .noneMatch(it ->
                it.says().startsWith(rule.name() + " (") && it.says().contains(range.mustBe())))
        .as(rule.name() + " " + number + says(read))
        .isEqualTo(meant);
    if (!meant) {
      assertThat(read.value().orElseThrow()).isEmpty();
      assertThat(read.findings().get(0).isError()).isTrue();
    }
  }

  @Provide
  Arbitrary<Double> shares() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, 1.0, -0.05, 1.05, 1e9, -1e9), Arbitraries.doubles().between(-1, 2));
  }

  @Example
  void what_it_must_be_is_said_in_words() {
    assertThat(says(judged("courses_per_line", 2.5)))
        .containsExactly(
            "courses_per_line (Courses between two snapped lines) must be a whole number"
                + " from 1 to 20 (course), but is 2.5");
    assertThat(says(judged("typed_waste", 10)))
        .containsExactly(
            "typed_waste (Waste rate typed by the estimator) must be from 0 to 0.5, but is"
                + " 10; 10 percent is written 10%");
    assertThat(says(judged("wanted_exposure", 1)))
        .containsExactly(
            "wanted_exposure (Exposure to lay; 0 takes all that the product allows) must be"
                + " 0, or from 3 to 12 in, but is 1");
    assertThat(says(judged("tear_off_layers", -0.05)))
        .singleElement()
        .asString()
        .endsWith("must be a whole number from 0 to 6 (layer), but is -0.05");
  }

  @Example
  void an_unknown_setting_is_refused_with_its_nearest_name() {
    Read<Map<String, Value>> read = judged("course_per_lines", 2);
    assertThat(says(read))
        .containsExactly("no setting 'course_per_lines'; nearest: 'courses_per_line'");
    assertThat(read.value()).contains(Map.of());
    assertThat(says(Takeoff.of(RULES, Jobs.plane(squares(), "A", 6, 20, 10), Jobs.PRODUCTS)))
        .anyMatch(it -> it.startsWith(
            "no setting or given value 'tear_of_layers'; nearest: 'tear_off_layers'"));
  }

  private static Names squares() {
    return Names.none().with("tear_of_layers", 2);
  }

  @Example
  void a_pair_that_runs_downward_counts_as_not_typed() {
    Read<Map<String, Value>> read = Settings.judged(
        RULES, Map.of("least_overhang", Value.of(1.5), "most_overhang", Value.of(0.5)));
    assertThat(says(read))
        .singleElement()
        .asString()
        .endsWith("must be no more than most_overhang, which is 0.5, but is 1.5");
    assertThat(read.value()).contains(Map.of());
    assertThat(says(judged("most_overhang", 0.1))).hasSize(1);
  }

  @Example
  void a_takeoff_reads_the_usual_where_a_number_cannot_be_meant() {
    Names names = Jobs.plane(Names.none(), "A", 6, 20, 10);
    assertThat(Jobs.number(names.with("courses_per_line", 2.5), "line_interval"))
        .isEqualTo(Jobs.number(names, "line_interval"));
    assertThat(Jobs.number(names.with("courses_per_line", 0), "lined_exposure"))
        .isEqualTo(Jobs.number(names, "lined_exposure"));
  }

  @Example
  void a_company_cannot_make_a_default_of_what_cannot_be_typed() {
    Read<Rulebook> read = RULES.overriddenBy("""
        name,per,kind,formula,unit
        courses_per_line,job,setting,2.5,course
        waste_choice,job,setting,guess,text
        cap_waste,job,setting,ten,ratio
        starter_waste,job,setting,4%,ratio
        eave_overhang,job,setting,300,mm
        my_allowance,job,setting,12,ratio
        """, "own-rules.csv");
    Rulebook rules = read.value().orElseThrow();
    assertThat(read.findings().stream().filter(Finding::isError))
        .extracting(finding -> finding.where() + ": " + finding.says())
        .containsExactly(
            "own-rules.csv, line 2, formula: courses_per_line (Courses between two snapped lines) must"
                + " be a whole number from 1 to 20 (course), but is 2.5",
            "own-rules.csv, line 3, formula: waste_choice (Where the waste rate comes from) must be"
                + " typed or shape or simulated, but is 'guess'",
            "own-rules.csv, line 4, formula: the default must be a number, but reads 'ten'",
            "own-rules.csv, line 6, unit: the unit of the setting eave_overhang must stay 'in', but is"
                + " 'mm'");
    assertThat(rules.rule("courses_per_line").orElseThrow().usual()).isEqualTo(Value.of(5));
    assertThat(rules.rule("starter_waste").orElseThrow().usual()).isEqualTo(Value.of(0.04));
    assertThat(rules.rule("my_allowance").orElseThrow().usual()).isEqualTo(Value.of(12));
  }
}
