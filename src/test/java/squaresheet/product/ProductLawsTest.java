package squaresheet.product;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.units.Length;

class ProductLawsTest {

  @Property(tries = 300)
  void metal_for_a_run_covers_it_and_a_piece_less_does_not(
      @ForAll @IntRange(min = 1, max = 2_000_000) int run,
      @ForAll @IntRange(min = 0, max = 40_000) int lap) {
    EdgeMetal metal = Products.metal(10, 0);
    EdgeMetal lapped = new EdgeMetal(metal.label(), metal.length(), new Length(lap));
    Length straight = new Length(run);
    long pieces = lapped.piecesFor(straight);
    assertThat(lapped.covers(pieces)).isGreaterThanOrEqualTo(straight);
    assertThat(lapped.covers(pieces - 1)).isLessThan(straight);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # run ft | pieces of 10 ft with 2 in of lap | worked by hand
        10     | 1 | one piece to the end
        10.5   | 2 | 10 ft + 9 ft 10 in
        19     | 2 | up to 19 ft 10 in
        20     | 3 | 2 in short of two pieces
      """)
  void runs_do_not_share_laps(double feet, long pieces, String source) {
    assertThat(Products.metal(10, 2).piecesFor(Products.inches(feet * 12)))
        .as(source)
        .isEqualTo(pieces);
  }

  @Property(tries = 200)
  void pieces_bundles_and_weight_of_a_square_hang_together(
      @ForAll @IntRange(min = 12, max = 48) int length,
      @ForAll @IntRange(min = 4, max = 8) int exposure,
      @ForAll @IntRange(min = 1, max = 40) int pieces,
      @ForAll @DoubleRange(min = 20, max = 100) double pounds) {
    Shingle shingle = Products.weighing(length, exposure, pieces, pounds);
    assertThat(shingle.packsPerSquare() * pieces)
        .isCloseTo(shingle.piecesPerSquare(), within(1e-9));
    assertThat(shingle.coveragePerPack().toSquares() * shingle.packsPerSquare())
        .isCloseTo(1, within(1e-12));
    assertThat(shingle.weightPerSquare().pounds().doubleValue())
        .isCloseTo(pounds * shingle.packsPerSquare(), within(1e-6));
    assertThat(shingle.coursesPerSquare() * exposure).isCloseTo(120, within(1e-9));
  }

  @Test
  void a_starter_that_is_split_gives_twice_the_strips_of_half_the_height() {
    Starter whole = Products.starter(36, 20, 1);
    Starter split = Products.starter(36, 20, 2);
    assertThat(split.stripsPerPack()).isEqualTo(2 * whole.stripsPerPack());
    assertThat(split.laidHeight().times(2)).isEqualTo(whole.laidHeight());
    assertThat(split.reachPerPack()).isEqualTo(whole.reachPerPack().times(2));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # nail | above the deck | deck | holds | source
      1.25   | 0.5            | 0.75 | true  | IRC R905.2.5: 3/4 in into the deck
      1.25   | 0.515625       | 0.75 | false | IRC R905.2.5, 1/64 in short
      1.25   | 0.75           | 0.5  | false | IRC R905.2.5: through a thinner deck, not just to its face
      1.25   | 0.734375       | 0.5  | true  | IRC R905.2.5: 1/64 in out at the other side
      """)
  void a_nail_goes_into_the_deck_or_through_a_thinner_one(
      double nail, double above, double deck, boolean holds, String source) {
    Fastener fastener =
        new Fastener(Products.label(Product.Kind.NAIL, "box", 7200), Products.inches(nail));
    assertThat(fastener.holds(Products.inches(above), Products.inches(deck)))
        .as(source)
        .isEqualTo(holds);
  }

  @Test
  void headlap_may_be_nothing_but_not_less() {
    Shingle shingle = Products.shingle(36, 5, 27);
    assertThat(new Shingle(
                shingle.label(),
                shingle.length(),
                Length.ofInches(10),
                shingle.exposure(),
                shingle.nails(),
                shingle.minimumSlope(),
                shingle.jointOffset())
            .headlap())
        .isEqualTo(Length.ZERO);
    assertThatThrownBy(() -> new Shingle(
            shingle.label(),
            shingle.length(),
            Length.ofInches(639, 64),
            shingle.exposure(),
            shingle.nails(),
            shingle.minimumSlope(),
            shingle.jointOffset()))
        .hasMessage(
            "height must be at least two exposures of 5\", so that the headlap is not negative, but is 9 63/64\"");
  }

  @Test
  void shorter_exposure_costs_material_and_longer_is_refused() {
    Shingle shingle = Products.shingle(36, 5, 27);
    assertThat(shingle.laidAt(Length.ofInches(4)).piecesPerSquare())
        .isGreaterThan(shingle.piecesPerSquare());
    assertThatThrownBy(() -> shingle.laidAt(Length.ofInches(321, 64)))
        .hasMessage("exposure laid must be at most the product's 5\", but is 5 1/64\"");
  }
}
