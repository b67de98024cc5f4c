package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import squaresheet.finding.Severity;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Sheet.Validation;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.takeoff.SettingRange;
import squaresheet.tape.TapeUnit;

/** In a job workbook a number that a setting cannot be is not let in; where it got in all the same, it is told at its cell. */
class SettingsInWorkbookTest {

  private static final JobInput FEET = DemoWorkbook.demo();
  private static final JobResult METRIC = JobResult.of(new JobInput(
          new JobCard("Alder Lane house", "", "", TapeUnit.METRES), FEET.roof(), FEET.company()))
      .value()
      .orElseThrow();

  private static DemoWorkbook written(boolean isMetric) {
    return isMetric ? new DemoWorkbook(METRIC) : new DemoWorkbook();
  }

  /**
   * The cell in which a setting is typed.
   *
   * @param at the cell
   * @param each how many of what is typed there make one of the setting
   */
  private record Typed(Address at, double each) {
    static Typed of(DemoWorkbook book, Rule rule) {
      boolean beside = book.stale().name(rule.name() + "_typed").isPresent();
      double metric = rule.unit().toString().equals("in") ? 25.4 : 0.3048;
      return new Typed(book.at(rule.name() + (beside ? "_typed" : ""), 0), beside ? metric : 1);
    }
  }

  /** Settings that stand for themselves: a pair is judged together too. */
  private static Stream<Rule> alone() {
    Set<String> upper =
        SettingRange.all().values().stream().map(SettingRange::notOver).collect(Collectors.toSet());
    return rules()
        .filter(rule -> rule.range().orElseThrow().notOver().isEmpty())
        .filter(rule -> !upper.contains(rule.name()));
  }

  private static Stream<Rule> rules() {
    return Rulebook.standard().settings().stream().filter(rule -> rule.range().isPresent());
  }

  @Provide
  Arbitrary<Rule> settings() {
    return Arbitraries.of(alone().toList());
  }

  /** Where between the least and the most. */
  @Provide
  Arbitrary<Double> shares() {
    return Arbitraries.of(-0.3, -0.05, 0.5013, 1.05, 2.0, 1e9);
  }

  private static List<String> errors(DemoWorkbook book) {
    return Verify.of(book.saved(), "job.xlsx").findings(Severity.ERROR).stream()
        .map(DrawnChecksTest::at)
        .toList();
  }

  @Property(tries = 6)
  void a_number_past_its_range_is_the_one_error_at_its_cell(
      @ForAll("settings") Rule rule, @ForAll("shares") double share, @ForAll boolean isMetric) {
    DemoWorkbook book = written(isMetric);
    Typed typed = Typed.of(book, rule);
    SettingRange range = rule.range().orElseThrow();
    double number = range.least() + share * (range.most() - range.least());
    book.type(typed.at(), number * typed.each());
    boolean meant = range.holds(number);
    List<String> told = errors(book);
    if (meant) {
      assertThat(told).noneMatch(it -> it.startsWith("setting-not-allowed"));
    } else {
      assertThat(told)
          .as(rule.name() + " " + number)
          .containsExactly("setting-not-allowed at " + typed.at());
    }
  }

  @Example
  void two_and_a_half_courses_to_a_line_withhold_the_totals() {
    for (double courses : new double[] {2.5, 0, 1e9}) {
      DemoWorkbook book = new DemoWorkbook();
      book.type(book.at("courses_per_line", 0), courses);
      Verdict verdict = Verify.of(book.saved(), "job.xlsx");
      assertThat(verdict.total()).isEmpty();
      assertThat(verdict.findings(Severity.ERROR)).singleElement().satisfies(finding -> assertThat(
              finding.says())
          .startsWith("courses_per_line (Courses between two snapped lines) must be a whole"
              + " number from 1 to 20 (course), but is ")
          .contains("; the usual value counts instead"));
    }
  }

  @Example
  void a_tolerance_of_the_tape_is_judged_like_any_setting() {
    DemoWorkbook book = new DemoWorkbook();
    Address at = book.at("tape_tolerance", 0);
    assertThat(errors(book.type(at, 40))).containsExactly("setting-not-allowed at " + at);
    assertThat(errors(book.type(at, new Content.Text("an inch"))))
        .containsExactly("text-in-number-cell at " + at);
    assertThat(errors(book.type(at, 1.5))).isEmpty();
  }

  @Example
  void a_metric_setting_is_told_in_the_unit_in_which_it_is_typed() {
    DemoWorkbook book = written(true);
    book.type(book.at("eave_overhang_typed", 0), 2500);
    assertThat(Verify.of(book.saved(), "job.xlsx").findings(Severity.ERROR))
        .singleElement()
        .satisfies(finding -> assertThat(finding.says())
            .startsWith("eave_overhang (Overhang past the wall, measured level) must be from 0 to"
                + " 1828.8 mm, but is 2500;"));
  }

  /** The spreadsheet program refuses what verify would. */
  @Example
  void every_number_among_the_settings_has_its_range_on_its_cell() {
    for (boolean isMetric : new boolean[] {false, true}) {
      DemoWorkbook book = written(isMetric);
      assertThat(rules()).allSatisfy(rule -> {
        Typed typed = Typed.of(book, rule);
        SettingRange range = rule.range().orElseThrow();
        Validation cell = validation(book.stale(), typed.at());
        if (range.isZeroToo()) {
          assertThat(cell.kind()).isEqualTo(Validation.Kind.CUSTOM);
          assertThat(cell.first()).startsWith("OR(" + typed.at().ref() + "=0,");
        } else {
          assertThat(cell.kind())
              .isEqualTo(range.isWhole() ? Validation.Kind.WHOLE : Validation.Kind.DECIMAL);
          assertThat(Double.parseDouble(cell.second()) / typed.each())
              .isEqualTo(range.most(), org.assertj.core.api.Assertions.within(1e-9));
        }
      });
    }
  }

  private static Validation validation(Workbook book, Address at) {
    return book.sheet(at.sheet()).orElseThrow().validations().stream()
        .filter(it -> it.blocks().stream().anyMatch(block -> block.contains(at.ref())))
        .findFirst()
        .orElseThrow(() -> new AssertionError(at.toString()));
  }

  @Example
  void there_is_one_way_in_and_a_job_workbook_is_held_against_its_model() {
    DemoWorkbook book = new DemoWorkbook();
    book.type(book.at("shingle_bundles", 0), 12);
    assertThat(errors(book)).contains("rule-typed-over at " + book.at("shingle_bundles", 0));
    Workbook named = new DemoWorkbook().saved();
    assertThat(Verify.of(named, "job.xlsx").total()).isPresent();
    Workbook nameless = new Workbook(
        named.sheets(), List.of(), false, named.calculation(), List.of(), named.properties());
    Verdict verdict = Verify.of(nameless, "job.xlsx");
    assertThat(verdict.isPassed()).as("a job workbook that lost its names").isFalse();
    assertThat(verdict.total()).isEmpty();
  }
}
