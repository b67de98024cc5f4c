package squaresheet.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.product.Product;
import squaresheet.product.Role;
import squaresheet.product.Selection;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofForms;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** Rolls and pieces along edges, each worked out by hand. */
class RunsTest {

  private static final Names PLANE = Jobs.plane(Names.none(), "A", 6, 40, 20);

  @Test
  void pieces_of_valley_lining_are_whole_for_each_valley() {
    Names names = Jobs.edge(Jobs.edge(PLANE, "A", "valley", 22.5), "A", "valley", 22.5);
    // ten-foot pieces with 6 in of lap reach 10, 19.5 and 29 ft: three for each of two valleys
    assertThat(Jobs.number(names, "valley_lining_pieces")).isEqualTo(6);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # valleys ft | rolls | one roll of 50 ft, less an end lap of 6 in, by hand
      45           | 1     | two valleys of 22.5 ft come off one roll
      49.5         | 1     | just one
      49.6         | 2     | and a little more
      0            | 0     | no valley
      """)
  void a_roll_of_valley_lining_is_cut_from_valley_to_valley(
      double valleys, double rolls, String source) {
    Map<String, Double> roll = Map.of(
        "valley_length", valleys, "valley_lining_roll_length", 50.0, "valley_lining_end_lap", 6.0);
    assertThat(Jobs.given("valley_lining_pieces", roll)).as(source).isEqualTo(rolls);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # opening | edge         | pieces | by hand, ten-foot pieces
      chimney   | opening back | 1      | flashed all round
      dormer    | opening back | 0      | the dormer's own roof runs on: common practice, no source
      dormer    | opening front| 1      | the foot of its front wall
      """)
  void nothing_is_flashed_behind_a_dormer(
      String opening, String edge, double pieces, String source) {
    Names names = Jobs.edge(PLANE, "A", edge, 2.5, opening);
    assertThat(Jobs.number(names, "headwall_flashing_pieces")).as(source).isEqualTo(pieces);
    assertThat(Jobs.number(names, "sealed_length")).as(source).isEqualTo(pieces * 2.5);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # attic sq ft | pieces | source
      1500          | 10     | 1500 / 150 x 144 / 2 = 720 sq in at 18 a foot are 40 ft: CR-042, by hand
      3000          | 10     | the ridge of 40 ft holds no more pieces of 4 ft
      """)
  void a_ridge_holds_no_more_vent_than_its_length(double attic, double pieces, String source) {
    assertThat(Jobs.number(PLANE.with("attic_typed", attic), "ridge_vent_pieces"))
        .as(source)
        .isEqualTo(pieces);
  }

  @Test
  void ice_barrier_on_a_hip_roof_covers_the_ring_along_its_eaves() {
    Roof hip = Roof.resolve(RoofForms.hip(Length.of(50, 0), Length.of(30, 0), Pitch.of(6)))
        .value()
        .orElseThrow();
    // two rows of 36 in with 3 1/2 in of lap reach 68.5 in; in plan that is a ring along 50 by 30
    // ft: by hand
    double in = 68.5 / 12 / Math.sqrt(1.25);
    double ring = 50 * 30 - (50 - 2 * in) * (30 - 2 * in);
    assertThat(Jobs.number(Names.of(hip), "ice_barrier_area"))
        .isCloseTo(ring * Math.sqrt(1.25), within(0.01));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # width in | sheet ft | 3:12, 40 ft of eave by 17 ft up, by hand
      36         | 520      | 17 in show: 680 / (17/12) = 480 and a strip of 40: CR-007, CR-010
      48         | 394.7826 | 23 in show, or there were one layer in places: 680 / (23/12) and 40
      """)
  void two_layers_lie_everywhere_whatever_the_width(double width, double sheet, String source) {
    Map<Role, Product> others = new EnumMap<>(Jobs.PRODUCTS.products());
    others.remove(Role.UNDERLAYMENT);
    Names low = Jobs.plane(Names.none(), "A", 3, 40, 17)
        .with("underlayment_roll_width", width)
        .with("underlayment_roll_length", 72);
    Takeoff takeoff =
        Takeoff.of(Rulebook.standard(), low, new Selection(others)).value().orElseThrow();
    assertThat(takeoff.number("double_sheet_length").orElseThrow())
        .as(source)
        .isCloseTo(sheet, within(1e-3));
  }
}
