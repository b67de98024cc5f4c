package squaresheet.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import squaresheet.formula.Formula;
import squaresheet.formula.Scope;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.units.Rounding;

/** What must hold for any roof; the numbers beside the rules are worked out here, without them. */
class TakeoffLawsTest {

  private static final Formula PACKS = Formula.of("ROUNDUP(pack_need*(1-1E-9),0)");

  private static double packs(double need) {
    Scope scope = new Scope() {
      @Override
      public Value cell(Address cell) {
        return new Value.Blank();
      }

      @Override
      public Value name(String name) {
        return Value.of(need);
      }
    };
    return ((Value.Number) PACKS.evaluate(scope)).value();
  }

  @Property(tries = 1000)
  void packs_by_formula_are_packs_by_the_named_rounding(
      @ForAll @DoubleRange(min = 0, max = 100_000) double need) {
    assertThat(packs(need)).isEqualTo((double) Rounding.UP_TO_PACK.apply(need));
  }

  @Property(tries = 1000)
  void a_whole_number_that_a_computer_misspells_is_that_number(
      @ForAll @IntRange(min = 1, max = 100_000) int whole,
      @ForAll @IntRange(min = -9, max = 9) int tenths) {
    double need = whole * (1 + tenths * 1e-10);
    assertThat(packs(need)).isEqualTo(whole);
    assertThat(Rounding.UP_TO_PACK.apply(need)).isEqualTo(whole);
  }

  @Property(tries = 1000)
  void packs_are_never_short_and_never_a_full_pack_over(
      @ForAll @DoubleRange(min = 0, max = 100_000) double need) {
    assertThat(packs(need)).isGreaterThanOrEqualTo(need * (1 - 1e-9)).isLessThan(need + 1);
  }

  @Property(tries = 60)
  void quantities_grow_with_the_area(
      @ForAll @DoubleRange(min = 5, max = 80) double eave,
      @ForAll @DoubleRange(min = 5, max = 40) double height,
      @ForAll @DoubleRange(min = 0, max = 20) double more,
      @ForAll @IntRange(min = 2, max = 24) int rise) {
    Takeoff small = Jobs.of(Jobs.plane(Names.none(), "A", rise, eave, height));
    Takeoff large = Jobs.of(Jobs.plane(Names.none(), "A", rise, eave + more, height + more / 2));
    for (Rule rule : Rulebook.standard().rules()) {
      if (!rule.orders().isEmpty()) {
        assertThat(large.number(rule.name()).orElseThrow())
            .as(rule.name())
            .isGreaterThanOrEqualTo(small.number(rule.name()).orElseThrow());
      }
    }
  }

  @Property(tries = 60)
  void quantities_grow_with_the_waste(
      @ForAll @DoubleRange(min = 0, max = 0.4) double waste,
      @ForAll @DoubleRange(min = 0, max = 0.1) double more) {
    Names names = Jobs.plane(Names.none(), "A", 6, 40, 20);
    for (String rule : List.of("shingle_bundles", "nail_boxes", "gross_area")) {
      assertThat(Jobs.number(names.with("typed_waste", waste + more), rule))
          .isGreaterThanOrEqualTo(Jobs.number(names.with("typed_waste", waste), rule));
    }
  }

  /** Two planes of a gable: the order by school arithmetic over the demo products. */
  @Property(tries = 100)
  void the_rules_agree_with_arithmetic_done_without_them(
      @ForAll @DoubleRange(min = 10, max = 90) double eave,
      @ForAll @DoubleRange(min = 8, max = 40) double height,
      @ForAll @IntRange(min = 2, max = 20) int rise,
      @ForAll @DoubleRange(min = 0, max = 0.3) double waste) {
    Names names =
        Jobs.plane(Jobs.bare(Names.none(), "B", rise, eave, height), "A", rise, eave, height);
    names = Jobs.edge(
        Jobs.edge(Jobs.edge(names, "B", "eave", eave), "B", "rake", height), "B", "rake", height);
    Takeoff takeoff = Jobs.of(names.with("typed_waste", waste));
    double area = 2 * eave * height;
    double factor = Math.hypot(12, rise) / 12;
    expect(takeoff, "net_squares", area / 100);
    expect(takeoff, "plan_area_total", area / factor);
    expect(takeoff, "vent_area", area / factor / 150 * 144);
    expect(takeoff, "eave_metal_packs", 2 * pieces(eave));
    expect(takeoff, "rake_metal_packs", 4 * pieces(height));
    expectPacks(takeoff, "shingle_bundles", area * (1 + waste) / (22 * 39.375 * 5.625 / 144));
    expectPacks(takeoff, "starter_bundles", (2 * eave + 4 * height) * 1.05 * 12 / 39.375 / 33);
    expectPacks(takeoff, "cap_bundles", eave * 12 / 8 * 1.05 / 48);
    expectPacks(takeoff, "underlayment_rolls", sheet(area, eave, rise) * 1.04 / (72 - 4 / 12.0));
    expectPacks(takeoff, "ice_barrier_rolls", 2 * eave * rows(36 * factor) / 64.5);
  }

  /** Ten-foot pieces with 2 in of lap, laid one after the other. */
  private static double pieces(double run) {
    int pieces = 1;
    for (double reach = 120; reach < run * 12 * (1 - 1e-9); reach += 118) {
      pieces++;
    }
    return pieces;
  }

  /**
   * Felt of 36 in: rows showing 34 in, or 17 in with a 19 in strip first, of which a sheet of 36 in gives one; and a foot
   * of it over the ridge.
   */
  private static double sheet(double area, double eave, int rise) {
    double ridge = eave / (34 / 12.0);
    return ridge + (rise < 4 ? area / (17 / 12.0) + 2 * eave : area / (34 / 12.0));
  }

  /** Rows of 36 in with 3 1/2 in of lap, laid one after the other; the reach is 36 in and more here, so 8:12 changes nothing. */
  private static double rows(double reach) {
    int rows = 1;
    for (double up = 36; up < reach * (1 - 1e-9); up += 32.5) {
      rows++;
    }
    return rows;
  }

  private static void expect(Takeoff takeoff, String rule, double expected) {
    assertThat(takeoff.number(rule).orElseThrow())
        .as(rule)
        .isCloseTo(expected, within(1e-9 * expected));
  }

  private static void expectPacks(Takeoff takeoff, String rule, double need) {
    double packs = takeoff.number(rule).orElseThrow();
    assertThat(packs)
        .as(rule)
        .isGreaterThanOrEqualTo(need * (1 - 2e-9))
        .isLessThan(need + 1)
        .isEqualTo(Math.rint(packs));
  }
}
