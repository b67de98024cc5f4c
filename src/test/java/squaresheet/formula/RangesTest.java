package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import squaresheet.sheet.Address;

class RangesTest {

  private static final Map<String, Formula> RULES = new LinkedHashMap<>();

  static {
    RULES.put("main_area", Formula.of("eave_length*rake_length"));
    RULES.put("net_area", Formula.of("main_area+porch_area"));
    RULES.put("gross_area", Formula.of("net_area*(1+waste_rate)"));
    RULES.put("shingle_bundles", Formula.of("ROUNDUP(gross_area/33.3,0)"));
    RULES.put(
        "job_price", Formula.of("IF(shingle_bundles>70,shingle_bundles*38,shingle_bundles*40)"));
  }

  private static Scope scope(Map<String, Double> given) {
    Map<String, Double> values = new HashMap<>(given);
    Scope scope = new Scope() {
      @Override
      public Value cell(Address cell) {
        return new Value.Blank();
      }

      @Override
      public Value name(String name) {
        return values.containsKey(name) ? Value.of(values.get(name)) : new Value.Fault("#NAME?");
      }
    };
    RULES.forEach((name, rule) -> values.put(name, ((Value.Number) rule.evaluate(scope)).value()));
    return scope;
  }

  private static final Map<String, Double> GIVEN =
      Map.of("eave_length", 40.0, "rake_length", 50.0, "porch_area", 12.0, "waste_rate", 0.1);

  @Test
  void a_quantity_has_the_range_that_the_readings_give_it() {
    Ranges ranges = Ranges.of(
        RULES,
        scope(GIVEN),
        Map.of(
            "eave_length", Interval.around(40, 1 / 12.0), "rake_length", Interval.around(50, 0.5)));
    Interval area = ranges.range("main_area").orElseThrow();
    // worked by hand: (40 - 1/12) x 49.5 and (40 + 1/12) x 50.5
    assertThat(area.low()).isCloseTo(1975.875, within(1e-9));
    assertThat(area.high()).isCloseTo(2024.2083333333333, within(1e-9));
    // worked by hand: 2186.66 / 33.3 = 65.67 up is 66; 2239.83 / 33.3 = 67.26 up is 68
    assertThat(ranges.range("shingle_bundles")).contains(new Interval(66, 68));
    assertThat(ranges.range("porch_area")).isEmpty();
  }

  @Test
  void readings_that_alone_change_the_order_by_a_pack_are_ranked() {
    Ranges ranges = Ranges.of(
        RULES,
        scope(GIVEN),
        Map.of(
            "eave_length", Interval.around(40, 1 / 12.0),
            "rake_length", Interval.around(50, 0.5),
            "porch_area", Interval.around(12, 60)));
    // now: 2012 x 1.1 / 33.3 = 66.46, up is 67; the eave alone: 66.33 to 66.60, always 67
    List<Ranges.Deciding> deciding = ranges.deciding("shingle_bundles", 67, 1);
    assertThat(deciding)
        .extracting(Ranges.Deciding::reading)
        .containsExactly("porch_area", "rake_length");
    assertThat(deciding.get(0).range()).isEqualTo(new Interval(65, 69));
    assertThat(deciding.get(1).range()).isEqualTo(new Interval(66, 68));
  }

  @Property(tries = 400)
  void every_value_a_formula_can_take_lies_in_its_range(
      @ForAll @DoubleRange(min = -1, max = 1) double one,
      @ForAll @DoubleRange(min = -1, max = 1) double other,
      @ForAll @DoubleRange(min = 5, max = 60) double eave,
      @ForAll @DoubleRange(min = 5, max = 60) double rake) {
    Map<String, Double> now = new HashMap<>(GIVEN);
    now.put("eave_length", eave);
    now.put("rake_length", rake);
    Ranges ranges = Ranges.of(
        RULES,
        scope(now),
        Map.of(
            "eave_length", Interval.around(eave, 0.25), "rake_length", Interval.around(rake, 0.5)));
    Map<String, Double> off = new HashMap<>(now);
    off.put("eave_length", eave + one * 0.25);
    off.put("rake_length", rake + other * 0.5);
    Scope then = scope(off);
    ranges.all().forEach((name, range) -> {
      double value = ((Value.Number) then.name(name)).value();
      double slack = 1e-9 * Math.max(1, Math.abs(value));
      assertThat(value).as(name).isBetween(range.low() - slack, range.high() + slack);
    });
  }

  @Test
  void functions_that_turn_back_are_followed_only_where_they_do_not() {
    Map<String, Interval> reading = Map.of("eave_length", new Interval(-2, 3));
    Map<String, Formula> rules = new LinkedHashMap<>();
    rules.put("squared_length", Formula.of("eave_length^2"));
    rules.put("size_only", Formula.of("ABS(eave_length)"));
    rules.put("over_it", Formula.of("1/eave_length"));
    rules.put("after_it", Formula.of("over_it+1"));
    Ranges ranges = Ranges.of(rules, cell -> new Value.Blank(), reading);
    assertThat(ranges.range("squared_length")).contains(new Interval(0, 9));
    assertThat(ranges.range("size_only")).contains(new Interval(0, 3));
    assertThat(ranges.range("over_it")).isEmpty();
    assertThat(ranges.range("after_it")).isEmpty();
  }

  @Test
  void a_workbook_has_ranges_cell_by_cell() {
    Calculation calculation =
        Calculation.of(CalculationTest.workbook(false, List.of(), new String[] {
          "Planes", "A1", "40", "B1", "50", "C1", "=A1*B1", "C2", "=ROUNDUP(SUM(C1:C1)/33.3,0)"
        }));
    Ranges ranges =
        Ranges.of(calculation, Map.of(Address.of("Planes", "A1"), Interval.around(40, 1)));
    assertThat(ranges.range("Planes!C1")).contains(new Interval(1950, 2050));
    assertThat(ranges.range("Planes!C2")).contains(new Interval(59, 62));
    assertThat(ranges.deciding("Planes!C2", 61, 1).get(0).reading()).isEqualTo("Planes!A1");
  }
}
