package squaresheet.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.estimate.PriceList;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Terms;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.product.Catalogue;
import squaresheet.product.Role;
import squaresheet.roof.RoofForms;
import squaresheet.roof.RoofNotes;
import squaresheet.takeoff.Order;
import squaresheet.takeoff.Rulebook;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;
import squaresheet.units.Money;
import squaresheet.units.Pitch;

/** The path from measures to price, on a gable of 40 ft by 28 ft at 6:12 with the demo company's products and prices. */
class JobResultTest {

  static final JobInput GABLE = new JobInput(
      JobCard.of("Gable"),
      RoofForms.gable(Length.of(40, 0), Length.of(28, 0), Pitch.of(6)),
      demo());

  static Company demo() {
    return new Company(
        Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow(),
        Rulebook.standard(),
        PriceList.read(text("prices.csv"), "prices.csv", "USD").value().orElseThrow(),
        Rates.read(text("rates.csv"), "rates.csv", "USD").value().orElseThrow(),
        Terms.read(text("terms.csv"), "terms.csv").value().orElseThrow());
  }

  private static String text(String file) {
    try {
      return Files.readString(Path.of("demo-data", file));
    } catch (IOException missing) {
      throw new AssertionError(missing);
    }
  }

  private static JobResult worked(JobInput input) {
    return JobResult.of(input).value().orElseThrow();
  }

  private static long shingleBundles(JobResult job) {
    return job.takeoff().orders().stream()
        .filter(order -> order.rule().role().equals(java.util.Optional.of(Role.SHINGLE)))
        .mapToLong(order -> order.packs().number())
        .sum();
  }

  @Test
  void a_plain_gable_is_ordered_as_by_hand() {
    JobResult job = worked(GABLE);
    // 40 × 28 × √1.25 = 1252.198 sq ft; a bundle covers 22 × 39.375 × 5.625 / 144 = 33.838 sq ft
    // (worked by hand)
    assertThat(job.roof().slopedArea().squareFeet()).isCloseTo(1252.198, within(0.02));
    // 1252.198 × 1.10 / 33.838 = 40.7
    assertThat(shingleBundles(job)).isEqualTo(41);
  }

  @Test
  void no_part_of_it_is_an_error() {
    assertThat(JobResult.of(GABLE).findings().stream().filter(Finding::isError)).isEmpty();
  }

  @Test
  void the_waste_of_the_layout_reaches_the_order_when_it_is_chosen() {
    JobResult job = worked(GABLE.with("waste_choice", "simulated"));
    double waste = job.layout().orElseThrow().simulatedWaste().toDouble();
    assertThat(job.takeoff().number("waste_rate")).contains(waste);
    assertThat(shingleBundles(job)).isEqualTo((long) Math.ceil(1252.198 * (1 + waste) / 33.838));
  }

  @Test
  void a_setting_of_the_layout_moves_its_lines() {
    JobResult job = worked(GABLE.with("courses_per_line", 2).with("tape_step", 0.25));
    // 2 × 5 5/8 = 11 1/4 in, a whole number of quarters
    assertThat(job.layout().orElseThrow().interval().laid()).isEqualTo(Length.ofInches(45, 4));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # unit | step in | interval in | 5 x 5 5/8 = 28 1/8 in, rounded down to the step, by hand
      FEET   | 1       | 28          | 28 whole inches
      FEET   | 3       | 27          | nine threes
      FEET   | 0.1     | 28.1        | tenths of an inch
      FEET   | 0       | 28.125      | as it is
      METRES | 1       | 28          | the step is what was typed, whatever the tape
      """)
  void the_lines_of_the_layout_are_those_of_the_workbook(
      TapeUnit unit, double step, double interval, String source) {
    JobCard card = new JobCard("Gable", "", "", unit);
    JobResult job =
        worked(new JobInput(card, GABLE.roof(), GABLE.company()).with("tape_step", step));
    assertThat(job.takeoff().number("line_interval").orElseThrow())
        .as(source)
        .isCloseTo(interval, within(1e-9));
    assertThat(job.layout().orElseThrow().interval().laid().toInches())
        .as(source)
        .isCloseTo(interval, within(1e-4));
  }

  /** However much shows of a course, one and the waste over the cover of a bundle are the shingles counted. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # wanted in | choice
      0           | product
      5           | product
      0           | as lined
      5.25        | as lined
      """)
  void simulated_waste_orders_the_shingles_that_were_counted(double wanted, String choice) {
    JobResult job = worked(GABLE
        .with("waste_choice", "simulated")
        .with("wanted_exposure", wanted)
        .with("exposure_choice", choice));
    long counted = job.layout().orElseThrow().pieces().used();
    // 22 pieces in a bundle of the demo catalogue
    assertThat(shingleBundles(job)).isEqualTo((counted + 21) / 22);
  }

  @Test
  void a_metric_job_rounds_lines_down_to_five_millimetres_unless_told() {
    JobCard card = new JobCard("Gable", "", "", TapeUnit.METRES);
    JobResult job = worked(new JobInput(card, GABLE.roof(), GABLE.company()));
    // 5 courses of 142.875 mm are 714.375 mm
    assertThat(job.layout().orElseThrow().interval().laid()).isEqualTo(Length.parse("710 mm"));
    assertThat(job.takeoff().number("line_interval").orElseThrow())
        .isCloseTo(710 / 25.4, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # unit | typed                     | repeat | what is said
      FEET   | stair                     | 6      |
      FEET   | 39 3/8; 26 1/4; 13 1/8    | 3      |
      METRES | 1000; 666; 333            | 3      |
      FEET   | 39 3/8; left over; 13 1/8 | 6      | first pieces must be stair, search, or lengths such as 39 3/8; 33 3/8; 27 3/8, but 'left over' is none; a stair by the product's least offset is laid
      """)
  void first_pieces_are_typed_searched_or_a_stair(
      TapeUnit unit, String typed, int repeat, String says) {
    JobCard card = new JobCard("Gable", "", "", unit);
    Read<JobResult> read = JobResult.of(
        new JobInput(card, GABLE.roof(), GABLE.company()).with("stagger_pattern", typed));
    assertThat(read.value().orElseThrow().layout().orElseThrow().stagger().repeat())
        .isEqualTo(repeat);
    assertThat(read.findings().stream()
            .filter(finding -> finding.info().id().equals("first-pieces-not-read"))
            .map(Finding::says)
            .findFirst()
            .orElse(null))
        .isEqualTo(says);
  }

  @Test
  void a_search_over_the_roof_leaves_no_slivers_where_a_stair_does() {
    JobInput wide = GABLE.with("sliver_width", 12);
    JobInput searched = wide.with("stagger_pattern", "search");
    assertThat(worked(wide).layout().orElseThrow().slivers())
        .as("the stair has a piece of 9 3/8 in")
        .isPositive();
    assertThat(worked(searched).layout().orElseThrow().slivers()).isZero();
  }

  @Test
  void the_estimate_foots_and_cross_foots() {
    JobResult job = worked(GABLE);
    Money total = job.estimate().total();
    assertThat(job.estimate().byCategory().values().stream().reduce(Money.zero("USD"), Money::plus))
        .isEqualTo(total);
    assertThat(job.estimate().byCostCode().values().stream().reduce(Money.zero("USD"), Money::plus))
        .isEqualTo(total);
    assertThat(total.amount()).isGreaterThan(BigDecimal.valueOf(5000));
  }

  @Test
  void a_roof_without_a_plane_is_nothing_and_says_why() {
    Read<JobResult> read =
        JobResult.of(new JobInput(JobCard.of("Empty"), new RoofNotes(List.of()), demo()));
    assertThat(read.value()).isEmpty();
    assertThat(read.findings()).isNotEmpty();
  }

  @Test
  void every_order_has_a_price_in_the_demo() {
    JobResult job = worked(GABLE);
    for (Order order : job.takeoff().orders()) {
      assertThat(job.estimate().lines()).as(order.product().id()).anyMatch(line -> line.item()
          .contains(order.product().label().description()));
    }
  }
}
