package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import squaresheet.roof.Roof;

/** Headings and labels as small contractors write them: short, with units anywhere, far from their values. */
class PlainHeadingsTest {

  private static AnyLayout layout(String rows) {
    return AnyLayout.of(Drawn.workbook(Drawn.sheet("Bid", rows)), "bid.xlsx");
  }

  private static List<String> cells(List<Guess> guesses) {
    return guesses.stream()
        .map(guess -> guess.at().ref() + " " + guess.property())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Price per square", "Price per bundle", "Price/bundle", "€/bundle"})
  void what_one_of_something_costs_is_no_price_of_the_job(String label) {
    AnyLayout layout = layout("| %s | 410 |%n| Total | =B1*7 ~ 2870 |".formatted(label));
    assertThat(cells(layout.bound())).contains("B2 price_total").doesNotContain("B1 price_total");
    assertThat(cells(layout.questions())).isEmpty();
  }

  @Test
  void a_column_of_prices_under_its_heading_is_no_price_of_the_job() {
    AnyLayout layout =
        layout("| Gutter | Price |\n| Front | =2*250 ~ 500 |\n| Rear | =2*250 ~ 500 |");
    assertThat(cells(layout.bound())).doesNotContain("B2 price_total");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Area, sq ft", "Area (sq ft)", "Sq ft", "SF", "Area sqft"})
  void an_area_in_square_feet_is_an_area_and_no_roofing_squares(String heading) {
    AnyLayout layout = layout("""
        | Plane | Eave, ft | Slope length, ft | Pitch | %s          |
        | Front | 46       | 17.5             | 9/12  | =B2*C2 ~ 805 |
        | Back  | 46       | 17.5             | 9/12  | =B3*C3 ~ 805 |
        """.formatted(heading));
    assertThat(cells(layout.bound())).contains("E1 sloped_area");
    assertThat(layout.read().roof().planes()).hasSize(2);
  }

  @Test
  void the_area_of_prepared_rows_is_known_by_their_formulas() {
    AnyLayout layout = layout("""
        | Face  | Shape | Eave (ft) | Top (ft) | Rafter (ft) | Pitch | Area               |
        |       |       |           |          |             |       | =(C2+D2)/2*E2 ~ 0  |
        |       |       |           |          |             |       | =(C3+D3)/2*E3 ~ 0  |
        | Total |       |           |          |             |       | =SUM(G2:G3) ~ 0    |
        """);
    assertThat(cells(layout.bound())).contains("G1 sloped_area");
  }

  @Test
  void a_number_typed_as_text_is_in_the_degrees_of_its_heading() {
    AnyLayout layout = layout("""
        | Plane | Shape     | Eave (m) | Rafter length (m) | Pitch ° |
        | Front | rectangle | 12.5     | 6.2               | '22     |
        """);
    Roof roof = Roof.resolve(layout.read().roof()).value().orElseThrow();
    // by hand: tan 22° is 0.404026, so 4.8483 in 12
    assertThat(roof.planes().get(0).pitch().rise().doubleValue())
        .isCloseTo(4.8483, org.assertj.core.api.Assertions.within(0.001));
  }

  @Test
  void the_first_plane_is_no_heading_where_units_stand_in_columns_of_their_own() {
    AnyLayout layout = layout("""
        | Area ID | Description | Eave | unit | Slope length | unit | SF              |
        | R1      | Front main  | 44   | ft   | 15.65        | ft   | =C2*E2 ~ 688.6  |
        | R2      | Back main   | 44   | ft   | 15.65        | ft   | =C3*E3 ~ 688.6  |
        """);
    assertThat(cells(layout.bound())).contains("A1 plane").doesNotContain("A2 plane");
  }

  @Test
  void a_value_far_along_the_row_of_its_label_is_asked() {
    AnyLayout layout = layout("| Total price |  |  |  |  |  | 4100 |");
    assertThat(cells(layout.questions())).containsExactly("G1 price_total");
    assertThat(layout.bound()).isEmpty();
  }

  @Test
  void squares_to_order_hold_the_waste() {
    AnyLayout layout = layout("| Squares to order | 17.7 |");
    assertThat(cells(layout.bound())).containsExactly("B1 total_gross_squares");
  }
}
