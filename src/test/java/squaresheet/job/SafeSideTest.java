package squaresheet.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.estimate.Rates;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.takeoff.Rulebook;
import squaresheet.tape.TapeReader;
import squaresheet.tape.TapeUnit;
import squaresheet.tape.Written;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/**
 * A pitch written in whole degrees or percents, where a limit lies within what was meant. Limits of the standard rulebook: 2:12
 * and 4:12 (IRC R905.2.2), 8:12 (IRC R905.1.2, 2015 to 2021), over 21:12 (IRC R905.2.6); the demo company pays more from 6:12
 * and 9:12.
 */
class SafeSideTest {

  private static final TapeReader READER = TapeReader.of(TapeUnit.FEET, Locale.US);

  private static final Company DEMO = JobResultTest.demo();

  private static PlaneNotes plane(String written) {
    Pitch.Span span = READER.pitchSpan(Written.of(written)).orElseThrow();
    Shape shape = new Shape.Rectangle(Length.of(40, 0), Length.of(20, 0));
    return new PlaneNotes("A", shape, Measured.ON_SLOPE, span.written())
        .doubting(Optional.of(span));
  }

  private static JobInput job(Company company, String... written) {
    List<PlaneNotes> planes = Arrays.stream(written).map(SafeSideTest::plane).toList();
    return new JobInput(JobCard.of("Pitch"), new RoofNotes(planes), company)
        .with("eave_overhang", 5)
        .with("tear_off_layers", 1);
  }

  private static Pitch settled(Read<JobInput> read) {
    PlaneNotes plane = read.value().orElseThrow().roof().planes().get(0);
    assertThat(plane.doubt()).isEmpty();
    return plane.pitch();
  }

  /** Worked by hand: the span is half a last digit below to a whole one above, its ends by 12 tan or 0.12 times. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # written | priced as | the limit | on the safe side
      18°       | 3.9:12    | 4:12      | as written: the underlayment is doubled
      33%       | 3.96:12   | 4:12      | as written
      26°       | 6:12      | 6:12      | the dearer rates begin
      27°       | 6.11:12   | 6:12      | as written
      36°       | 9:12      | 9:12      | the dearer rates begin
      33°       | 8:12      | 8:12      | the ice barrier reaches 36 in; (6 + 24) × 1.2 is no more
      67%       | 8.04:12   | 8:12      | as written
      60°       | 21.01:12  | 21:12     | six nails are for what is steeper than 21:12
      17%       | 1.99:12   | 2:12      | shingles are refused
      9°        | 1.9:12    | 2:12      | as written
      """)
  void a_plane_is_priced_on_the_safe_side_and_asked_about(
      String written, String safe, String limit, String why) {
    Read<JobInput> read = job(DEMO, written).onTheSafeSide();
    assertThat(settled(read).show()).as(why).isEqualTo(safe);
    assertThat(read.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.info().id()).isEqualTo("pitch-near-limit");
      assertThat(finding.info().severity()).isEqualTo(Severity.WARNING);
      assertThat(finding.says()).contains(" " + limit + " is a limit of '");
    });
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # written | setting       | value | nothing turns on it
      33°       | code_edition  | 2024  | the steep rule for ice barrier is gone
      33°       | eave_overhang | 12    | (12 + 24) × 1.2 is more than 36 in on either side
      33°       | ice_choice    | no    | no ice barrier
      60°       | nail_pattern  | high wind | six nails on either side
      24°       | eave_overhang | 5     | 5.23:12 to 5.6:12: no limit
      """)
  void a_limit_that_changes_nothing_is_not_asked_about(
      String written, String setting, String value, String why) {
    JobInput input = job(DEMO, written);
    Read<JobInput> read = (value.matches("\\d+")
            ? input.with(setting, Double.parseDouble(value))
            : input.with(setting, value))
        .onTheSafeSide();
    assertThat(read.findings()).as(why).isEmpty();
    assertThat(settled(read)).isEqualTo(plane(written).pitch());
  }

  /** Limits of a company's own rules, however they are written; 30° is 6.79:12 to 7.21:12, 22° is 4.72:12 to 5.09:12. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      # per  | formula                                             | written | priced as
      plane  | IF(pitch_rise>=7,2,1)                               | 30°     | 7:12
      plane  | IF(7.1>=pitch_rise,2,1)                             | 30°     | 6.93:12
      plane  | IF(DEGREES(ATAN(pitch_rise/12))<=30.5,3,1)          | 30°     | 6.93:12
      plane  | IF(pitch_factor>SQRT(1+(7/12)^2),2,1)               | 30°     | 7.01:12
      plane  | VLOOKUP(pitch_rise,{0,1;7,4;9,5},2)                 | 30°     | 7:12
      plane  | MATCH(pitch_rise,{0,5,7},1)                         | 22°     | 5:12
      plane  | IF(AND(code_edition>2000,pitch_rise>least_slope+3),2,1) | 22° | 5.01:12
      job    | SUMIFS(net_sloped_area,pitch_rise,">=7")            | 30°     | 7:12
      job    | SUMPRODUCT((pitch_rise>=7)*net_sloped_area)         | 30°     | 7:12
      """)
  void a_limit_of_a_rule_of_the_companys_own_counts(
      String per, String formula, String written, String safe) {
    String own = "name,per,kind,formula,unit,orders,label\ntarp_area," + per + ",rule,\""
        + formula.replace("\"", "\"\"") + "\",sq ft,,Tarps\n"
        + (per.equals("job")
            ? "deck_repair_area,,,tarp_area,,,\n"
            : "deck_repair_area,,,SUM(tarp_area)*100,,,\n");
    Rulebook rules = Rulebook.standard().overriddenBy(own, "own.csv").value().orElseThrow();
    Read<JobInput> read = job(with(rules), written).onTheSafeSide();
    assertThat(settled(read).show()).as(formula).isEqualTo(safe);
    assertThat(read.findings()).hasSize(1);
  }

  private static Company with(Rulebook rules) {
    return new Company(DEMO.catalogue(), rules, DEMO.prices(), DEMO.rates(), DEMO.terms());
  }

  /** At 4:12 underlayment is doubled below, and these rates are dearer above: the side with the higher price is taken. */
  @ParameterizedTest
  @CsvSource({"1.70,3.9:12", "9.00,4:12"})
  void where_rules_and_rates_pull_apart_the_dearer_side_is_taken(String hours, String safe) {
    String csv = """
        item,category,quantity,amount,unit,crew,pitch_from_in_per_12,pitch_below_in_per_12
        roofer,crew,,46.00,$/hour,,,
        lay shingles,labour,plane_squares,1.60,hour/square,roofer,,4
        lay shingles,labour,plane_squares,%s,hour/square,roofer,4,
        """.formatted(hours);
    Rates rates = Rates.read(csv, "rates.csv", "USD").value().orElseThrow();
    Company company =
        new Company(DEMO.catalogue(), DEMO.rulebook(), DEMO.prices(), rates, DEMO.terms());
    Read<JobInput> read = job(company, "18°").onTheSafeSide();
    assertThat(settled(read).show()).isEqualTo(safe);
    assertThat(read.findings()).singleElement().satisfies(finding -> assertThat(finding.says())
        .contains("'Layers of underlayment' and 'rate of lay shingles'"));
  }

  /** 17.35° is 3.749:12, and 3.75:12 is no pitch in half inches that it could be taken for. */
  @Test
  void a_finer_figure_is_asked_about_where_a_limit_of_the_companys_own_is_as_fine() {
    Read<JobInput> read = job(DEMO, "17.36°").with("double_layer_below", 3.753).onTheSafeSide();
    assertThat(settled(read).show()).isEqualTo("3.75:12");
    assertThat(read.findings()).hasSize(1);
  }

  /** Two rolls for one plane and two for the other: each plane is put on its side by itself, whatever the packs come to. */
  @Test
  void every_plane_in_doubt_is_settled_and_said() {
    PlaneNotes one = plane("18°");
    PlaneNotes other = new PlaneNotes(
            "B", one.shape(), one.measured(), Pitch.of(9), one.sides(), List.of(), Map.of())
        .doubting(READER.pitchSpan(Written.of("26°")));
    PlaneNotes sure = new PlaneNotes("C", one.shape(), one.measured(), Pitch.of(5));
    RoofNotes roof = new RoofNotes(List.of(one, other, sure));
    Read<JobInput> read = new JobInput(JobCard.of("Pitch"), roof, DEMO).onTheSafeSide();
    assertThat(read.value().orElseThrow().roof().planes())
        .extracting(plane -> plane.id() + " " + plane.pitch().show())
        .containsExactly("A 3.9:12", "B 6:12", "C 5:12");
    assertThat(read.findings())
        .extracting(Finding::where)
        .containsExactly(one.at("pitch"), other.at("pitch"));
  }
}
