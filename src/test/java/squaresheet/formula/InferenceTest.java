package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.sheet.Address;
import squaresheet.units.Unit;

class InferenceTest {

  private static final Map<String, String> UNITS = Map.ofEntries(
      Map.entry("eave_length", "ft"),
      Map.entry("overhang_depth", "in"),
      Map.entry("plan_area", "sq ft plan"),
      Map.entry("sloped_area", "sq ft sloped"),
      Map.entry("net_area", "sq ft"),
      Map.entry("net_squares", "square"),
      Map.entry("waste_rate", "ratio"),
      Map.entry("waste_percent", "%"),
      Map.entry("roof_pitch", "pitch"),
      Map.entry("pitch_factor", "ratio"),
      Map.entry("shingle_bundles", "bundle"),
      Map.entry("felt_rolls", "roll"),
      Map.entry("bundle_price", "$/bundle"),
      Map.entry("square_price", "$/square"),
      Map.entry("bundle_coverage", "sq ft/bundle"),
      Map.entry("labour_rate", "$/hour"),
      Map.entry("labour_hours", "hour"),
      Map.entry("piece_length", "ft/piece"),
      Map.entry("piece_inches", "in/piece"),
      Map.entry("permit_fee", "$"));

  private static final Labels LABELS = new Labels() {
    @Override
    public Optional<Unit> unit(String name) {
      return Optional.ofNullable(UNITS.get(name)).map(Unit::parse);
    }
  };

  private static Inference infer(String formula, String wanted) {
    Optional<Unit> unit = wanted.isEmpty() ? Optional.empty() : Optional.of(Unit.parse(wanted));
    return Inference.of(Formula.of(formula), nowhere(), LABELS, unit);
  }

  private static Scope nowhere() {
    return cell -> new Value.Blank();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
      # formula                                        | comes to
      eave_length+eave_length                          | ft
      eave_length*eave_length                          | sq ft
      net_area*(1+waste_rate)                          | sq ft
      net_area*1.1                                     | sq ft
      ROUNDUP(net_area*(1+waste_rate)/bundle_coverage,0) | bundle
      shingle_bundles*bundle_price                     | $
      net_squares*square_price                         | $
      labour_hours*labour_rate+permit_fee              | $
      SUM(permit_fee,labour_hours*labour_rate)         | $
      eave_length/piece_length                         | piece
      overhang_depth/12+eave_length                    | ft
      plan_area*SQRT(1+(roof_pitch/12)^2)              | sq ft
      plan_area*pitch_factor-sloped_area               | sq ft sloped
      sloped_area/plan_area                            | ratio
      SQRT(net_area)                                   | ft
      IF(roof_pitch<4,2,1)*net_area                    |
      net_area/100+net_squares                         | square
      eave_length-2*eave_length                        | ft
      waste_percent/100+1                              | ratio
      net_squares*waste_percent/100+net_squares        | square
      net_squares*(100+waste_percent)/100              | square
      net_squares*(1+waste_percent%)                   | square
      net_squares*3                                    |
      net_area/33.3+shingle_bundles                    |
      eave_length*12/overhang_depth                    |
      eave_length/overhang_depth*12                    |
      ROUNDUP(net_squares*bundle_price*3,2)            |
      net_squares/100*waste_percent                    | square
      net_squares/100*5                                |
      SUMPRODUCT(shingle_bundles,bundle_price)         | $
      MAX(0,net_squares-net_area/100)                  | square
      """)
  void sound_formulas_stay_silent_and_give_their_unit(String formula, String unit) {
    Inference inference = infer(formula, "");
    assertThat(inference.clashes()).isEmpty();
    if (unit != null) {
      assertThat(inference.unit().map(Unit::toString)).contains(unit);
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
      eave_length+net_area        | cannot add length and area: eave_length is ft, net_area is sq ft
      net_squares*(1)+waste_rate  | cannot add squares and ratio: net_squares*1 is square, waste_rate is ratio
      eave_length+overhang_depth  | cannot add length and length: eave_length is ft, overhang_depth is in; bring both to one of them first
      plan_area+sloped_area       | cannot add plan area and sloped area: plan_area is sq ft plan, sloped_area is sq ft sloped; multiply the plan area by the pitch factor first
      plan_area<sloped_area       | cannot compare plan area and sloped area: plan_area is sq ft plan, sloped_area is sq ft sloped; multiply the plan area by the pitch factor first
      net_squares*bundle_price    | cannot multiply square by $/bundle: net_squares is square, bundle_price is $/bundle, and what comes out is $·square/bundle
      felt_rolls*bundle_price     | cannot multiply roll by $/bundle: felt_rolls is roll, bundle_price is $/bundle, and what comes out is $·roll/bundle
      net_area*square_price       | cannot multiply sq ft by $/square: net_area is sq ft, square_price is $/square; turn ft into square first
      net_area*(1+waste_percent)  | waste_percent is in percent, where 10 means 10 %, but is used as a ratio: write waste_percent/100
      net_area*waste_percent      | waste_percent is in percent, where 10 means 10 %, but net_area is multiplied by it as a ratio: write waste_percent/100
      eave_length/piece_inches    | cannot divide ft by in/piece: eave_length is ft, piece_inches is in/piece; turn ft into in first
      net_squares+net_squares*waste_percent | waste_percent is in percent, where 10 means 10 %, but net_squares is multiplied by it as a ratio: write waste_percent/100
      net_squares/100*square_price | net_squares is square already, and a square is 100 sq ft: divided by 100 once more it is nothing anybody orders
      net_area/100/100             | net_area/100 is square already, and a square is 100 sq ft: divided by 100 once more it is nothing anybody orders
      SUM(shingle_bundles,felt_rolls) | cannot take together bundles and rolls: shingle_bundles is bundle, felt_rolls is roll
      IF(roof_pitch<4,net_area,net_squares) | cannot choose between area and squares: net_area is sq ft, net_squares is square; bring both to one of them first
      """)
  void units_that_do_not_agree_are_said_with_both_sides(String formula, String sentence) {
    Inference inference = infer(formula, "");
    assertThat(inference.clashes()).extracting(Inference.Clash::sentence).containsExactly(sentence);
  }

  @Test
  void the_part_that_is_wrong_is_shown() {
    Inference inference = infer("ROUNDUP((eave_length+net_area)*2,0)", "");
    assertThat(inference.clashes().get(0).part()).isEqualTo("eave_length+net_area");
  }

  @Test
  void the_result_is_held_against_the_unit_it_is_to_have() {
    assertThat(infer("net_area*(1+waste_rate)", "bundle").clashes().get(0).sentence())
        .isEqualTo("must come to bundle, but net_area*(1+waste_rate) comes to sq ft");
    assertThat(infer("net_area/100", "square").clashes()).isEmpty();
    assertThat(infer("net_area", "square").clashes()).hasSize(1);
  }

  @Test
  void what_is_not_known_follows_from_what_is() {
    assertThat(infer("shingle_bundles*unit_cost", "$").deduced())
        .isEqualTo(Map.of("unit_cost", Unit.parse("$/bundle")));
    assertThat(infer("net_area/coverage_each", "roll").deduced())
        .isEqualTo(Map.of("coverage_each", Unit.parse("sq ft/roll")));
    assertThat(infer("eave_length+rake_length", "").deduced())
        .isEqualTo(Map.of("rake_length", Unit.parse("ft")));
    assertThat(infer("ROUNDUP(B7*bundle_price,2)", "$").deduced())
        .isEqualTo(Map.of("B7", Unit.parse("bundle")));
  }

  @Test
  void cells_of_one_block_must_agree() {
    Labels labels = new Labels() {
      @Override
      public Optional<Unit> unit(Address cell) {
        return Optional.of(Unit.parse(cell.ref().row() < 2 ? "ft" : "sq ft"));
      }
    };
    Inference inference =
        Inference.of(Formula.of("SUM(A1:A4)"), nowhere(), labels, Optional.empty());
    assertThat(inference.clashes().get(0).sentence())
        .isEqualTo("cannot take together length and area: A2 is ft, A3 is sq ft");
  }
}
