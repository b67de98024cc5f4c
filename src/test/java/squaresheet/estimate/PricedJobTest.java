package squaresheet.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.product.Catalogue;
import squaresheet.product.Selection;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.takeoff.Names;
import squaresheet.takeoff.Rulebook;
import squaresheet.takeoff.Takeoff;
import squaresheet.units.Length;
import squaresheet.units.Money;
import squaresheet.units.Pitch;

/** The demo company prices a shed roof of 20 ft by 10 ft on the slope. */
class PricedJobTest {

  private static String demo(String file) throws IOException {
    return Files.readString(Path.of("demo-data", file));
  }

  private static Takeoff shed(long rise, double stories) {
    Shape shape = new Shape.Rectangle(Length.of(20, 0), Length.of(10, 0));
    Roof roof = Roof.resolve(
            RoofNotes.of(new PlaneNotes("A", shape, PlaneNotes.Measured.ON_SLOPE, Pitch.of(rise))))
        .value()
        .orElseThrow();
    Selection products = Selection.firstOfEach(
        Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow());
    Names names = Names.of(roof).with("building_stories", stories).with("tear_off_layers", 2);
    return Takeoff.of(Rulebook.standard(), names, products).value().orElseThrow();
  }

  private static Read<Estimate> priced(Takeoff takeoff, String prices, String rates)
      throws IOException {
    return Estimate.of(
        takeoff,
        PriceList.read(prices, "prices.csv", "USD").value().orElseThrow(),
        Rates.read(rates, "rates.csv", "USD").value().orElseThrow(),
        Terms.read(demo("terms.csv"), "terms.csv").value().orElseThrow());
  }

  private static Money amount(Estimate estimate, String item) {
    return estimate.lines().stream()
        .filter(line -> line.item().equals(item))
        .findFirst()
        .orElseThrow()
        .amount();
  }

  private static Money dollars(String amount) {
    return Money.of("USD", new BigDecimal(amount));
  }

  @Test
  void the_demo_tables_read_without_a_word() throws IOException {
    assertThat(PriceList.read(demo("prices.csv"), "prices.csv", "USD").findings())
        .isEmpty();
    assertThat(Rates.read(demo("rates.csv"), "rates.csv", "USD").findings()).isEmpty();
    assertThat(Terms.read(demo("terms.csv"), "terms.csv").findings()).isEmpty();
    assertThat(priced(shed(6, 1), demo("prices.csv"), demo("rates.csv")).findings())
        .isEmpty();
  }

  @Test
  void packs_and_hours_are_extended_to_the_cent() throws IOException {
    Estimate estimate =
        priced(shed(6, 1), demo("prices.csv"), demo("rates.csv")).value().orElseThrow();
    // 2 squares and a tenth, 220 / 33.84 = 6.5, so 7 bundles of 38.50: by hand
    assertThat(amount(estimate, "Laminated shingle, metric size")).isEqualTo(dollars("269.50"));
    // 2 squares x 2.00 h x 46.00, and 2 squares x 2 layers x 1.20 h x 33.50: by hand
    assertThat(amount(estimate, "lay shingles")).isEqualTo(dollars("184.00"));
    assertThat(amount(estimate, "tear off")).isEqualTo(dollars("160.80"));
  }

  @Test
  void hours_follow_the_pitch_and_the_height() throws IOException {
    // 2 squares x 46.00 x 1.60, 2.00, 3.00 and, from two stories, 2.50: by hand
    assertThat(List.of(
            amount(
                priced(shed(5, 1), demo("prices.csv"), demo("rates.csv"))
                    .value()
                    .orElseThrow(),
                "lay shingles"),
            amount(
                priced(shed(9, 1), demo("prices.csv"), demo("rates.csv"))
                    .value()
                    .orElseThrow(),
                "lay shingles"),
            amount(
                priced(shed(6, 2), demo("prices.csv"), demo("rates.csv"))
                    .value()
                    .orElseThrow(),
                "lay shingles")))
        .containsExactly(dollars("147.20"), dollars("276.00"), dollars("230.00"));
  }

  @Test
  void a_price_by_the_square_is_turned_into_one_by_the_bundle() throws IOException {
    String bySquare =
        demo("prices.csv").replace("laminated-metric,38.50,bundle", "laminated-metric,100,square");
    Estimate estimate = priced(shed(6, 1), bySquare, demo("rates.csv")).value().orElseThrow();
    // 7 bundles of 22 x 39.375 x 5.625 / 14400 squares at 100: 7 x 33.837890625 = 236.865..., by
    // hand
    assertThat(amount(estimate, "Laminated shingle, metric size")).isEqualTo(dollars("236.87"));
  }

  @Test
  void what_has_no_price_or_no_rate_is_said() throws IOException {
    String prices = demo("prices.csv")
        .replace("felt-30,34.80,roll", "felt-30,34.80,sq ft")
        .replace("coil-nail,", "coil-nale,");
    String rates = demo("rates.csv")
        .replace(
            "lay shingles,labour,plane_squares,2.00,hour/square,roofer,6,9,,2",
            "lay shingles,labour,plane_squares,2.00,hour/square,roofer,7,9,,2");
    assertThat(priced(shed(6, 1), prices, rates).findings())
        .extracting(Finding::says)
        .containsExactly(
            "the price of felt-30 must be per roll, but is per sq ft",
            "no price for coil-nail; nearest: 'coil-nale'",
            "one rate of lay shingles must fit a pitch of 6:12 and 1 stories, but 0 do");
  }

  @Test
  void a_rate_must_fit_the_unit_of_its_quantity() throws IOException {
    String rates = """
        item,category,quantity,amount,unit,crew
        roofer,crew,,46.00,$/hour,
        forgot the crew,labour,plane_squares,1.60,hour/square,
        by the foot,labour,plane_squares,1.60,hour/ft,roofer
        by the day,permit,,185,$/square,
        """;
    assertThat(priced(shed(6, 1), demo("prices.csv"), rates).findings())
        .extracting(Finding::says)
        .containsExactly(
            "the rate of forgot the crew without a crew must be in $/square, but is in hour/square",
            "the rate of by the foot must be in hour/square, but is in hour/ft",
            "the rate of by the day without a crew must be in $, but is in $/square");
  }

  @Test
  void a_rate_by_the_square_of_a_quantity_in_square_feet_is_turned_round() throws IOException {
    String rates = """
        item,category,quantity,amount,unit,crew
        roofer,crew,,46.00,$/hour,
        sweep,labour,net_area,0.50,hour/square,roofer
        hoist,equipment,net_area,6.50,$/square,
        """;
    Estimate estimate = priced(shed(6, 1), demo("prices.csv"), rates).value().orElseThrow();
    // 200 sq ft are 2 squares: 2 x 0.50 h x 46.00 and 2 x 6.50, by hand
    assertThat(amount(estimate, "sweep")).isEqualTo(dollars("46.00"));
    assertThat(amount(estimate, "hoist")).isEqualTo(dollars("13.00"));
  }

  @Test
  void the_order_list_has_each_product_once() {
    assertThat(OrderList.of(shed(6, 1)).entries())
        .extracting(entry -> entry.product().id())
        .doesNotHaveDuplicates()
        .contains("laminated-metric", "felt-30");
  }
}
