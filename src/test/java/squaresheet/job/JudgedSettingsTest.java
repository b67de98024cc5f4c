package squaresheet.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.formula.Value;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.tape.TapeUnit;

/** Whatever is typed for a setting: takeoff and layout read one number, and where it cannot be meant that is an error. */
class JudgedSettingsTest {

  private static final JobInput GABLE = JobResultTest.GABLE;

  private static List<String> errors(Read<?> read) {
    return read.findings().stream().filter(Finding::isError).map(Finding::says).toList();
  }

  @Property(tries = 100)
  void takeoff_and_layout_lay_as_many_courses_to_a_line(
      @ForAll("courses") double courses, @ForAll boolean isMetric) {
    JobCard card = new JobCard("Gable", "", "", isMetric ? TapeUnit.METRES : TapeUnit.FEET);
    Read<JobResult> read = JobResult.of(
        new JobInput(card, GABLE.roof(), GABLE.company()).with("courses_per_line", courses));
    JobResult job = read.value().orElseThrow();
    int laid = job.layout().orElseThrow().interval().courses();
    assertThat(job.takeoff().number("courses_per_line").orElseThrow()).isEqualTo(laid);
    assertThat(job.takeoff().number("line_interval").orElseThrow())
        .isCloseTo(job.layout().orElseThrow().interval().laid().toInches(), within(1e-4));
    boolean meant = courses >= 1 && courses <= 20 && courses == Math.rint(courses);
    assertThat(errors(read)).hasSize(meant ? 0 : 1);
    assertThat(laid).isEqualTo(meant ? (int) courses : 5);
  }

  @Provide
  Arbitrary<Double> courses() {
    return Arbitraries.oneOf(
        Arbitraries.integers().between(-1, 22).map(Integer::doubleValue),
        Arbitraries.doubles().between(-2, 30),
        Arbitraries.of(2.5, 1e9, 1e300, -0.0, 0.4));
  }

  private static final JobResult USUAL = JobResult.of(GABLE).value().orElseThrow();

  /** A number that cannot be meant leaves the job as it was. */
  @Property(tries = 60)
  void a_job_with_a_number_past_its_range_is_priced_as_without_and_says_so(
      @ForAll("settings") Rule rule, @ForAll @DoubleRange(min = 0.01, max = 3) double past) {
    double most = rule.range().orElseThrow().most();
    for (double number : new double[] {most * (1 + past), -past}) {
      Read<JobResult> read = JobResult.of(GABLE.with(rule.name(), number));
      assertThat(errors(read)).singleElement().asString().startsWith(rule.name() + " (");
      assertThat(read.value().orElseThrow().estimate().total())
          .isEqualTo(USUAL.estimate().total());
      assertThat(read.value().orElseThrow().layout().map(it -> it.settings()))
          .isEqualTo(USUAL.layout().map(it -> it.settings()));
      assertThat(read.value().orElseThrow().input().settings()).doesNotContainKey(rule.name());
    }
  }

  @Provide
  Arbitrary<Rule> settings() {
    Stream<Rule> numbers =
        Rulebook.standard().settings().stream().filter(rule -> rule.range().isPresent());
    return Arbitraries.of(numbers.toList());
  }

  @Example
  void a_step_wider_than_its_courses_counts_as_not_typed() {
    Read<JobResult> read = JobResult.of(GABLE.with("courses_per_line", 1).with("tape_step", 6));
    assertThat(errors(read))
        .containsExactly(
            "tape_step (Line interval is rounded down to whole steps of) must be no more than the courses"
                + " between two lines, 5.625 in, but is 6");
    // one course of 5 5/8 in, rounded down to the usual inch
    assertThat(read.value().orElseThrow().takeoff().number("line_interval")).contains(5.0);
    assertThat(
            read.value().orElseThrow().layout().orElseThrow().interval().laid().toInches())
        .isEqualTo(5);
  }

  @Example
  void limits_of_the_overhang_that_run_downward_do_not_stop_the_job() {
    Read<JobResult> read = JobResult.of(GABLE.with("least_overhang", 2));
    assertThat(errors(read))
        .singleElement()
        .asString()
        .endsWith("must be no more than most_overhang, which is 1, but is 2");
    assertThat(read.value()).isPresent();
  }

  @Example
  void an_unknown_setting_is_an_error_with_its_nearest_name() {
    Read<JobResult> read = JobResult.of(GABLE.with("eave_overhangs", 18));
    assertThat(errors(read))
        .containsExactly("no setting 'eave_overhangs'; nearest: 'eave_overhang', 'rake_overhang',"
            + " 'least_overhang'");
    assertThat(read.value().orElseThrow().input().settings())
        .doesNotContainEntry("eave_overhangs", Value.of(18));
  }
}
