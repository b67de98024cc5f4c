package squaresheet.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.product.Role;
import squaresheet.product.Selection;
import squaresheet.units.Ratio;

class RulebookTest {

  private static List<String> says(Read<?> read) {
    return read.findings().stream()
        .map(finding -> finding.where() + ": " + finding.says())
        .toList();
  }

  @Test
  void every_role_is_ordered_by_one_standard_rule() {
    List<String> orders = Rulebook.standard().rules().stream()
        .map(Rule::orders)
        .filter(role -> !role.isEmpty())
        .toList();
    assertThat(orders).doesNotHaveDuplicates().hasSize(Role.values().length);
  }

  @Test
  void every_measure_that_products_give_is_listed_with_its_unit() {
    Jobs.PRODUCTS.products().forEach((role, product) -> product.facts().forEach(fact -> {
      String name = role + "_" + fact.name();
      Rule rule = Rulebook.standard().rule(name).orElseThrow(() -> new AssertionError(name));
      assertThat(name.endsWith("pieces_per_pack") || fact.unit().equals(rule.unit()))
          .as(name)
          .isTrue();
    }));
  }

  @Test
  void rules_stand_after_those_they_ask_for() {
    Rulebook book = Rulebook.standard();
    Set<String> done = new HashSet<>();
    for (Rule rule : book.inOrder()) {
      assertThat(book.asks(rule.name()).stream()
              .filter(
                  asked -> book.rule(asked).orElseThrow().isWorkedOut() && !done.contains(asked)))
          .as(rule.name())
          .isEmpty();
      done.add(rule.name());
    }
  }

  @Test
  void a_company_rule_stands_in_for_the_standard_one_and_is_said() {
    Read<Rulebook> read = Jobs.company("starter_run,eave_length\n");
    assertThat(says(read))
        .containsExactly(
            "company.csv, line 2, formula: company rule starter_run is 'eave_length' in place of "
                + "the standard 'eave_length+IF(starter_rakes=\"yes\",rake_length,0)'");
    Names names = Jobs.plane(Names.none(), "A", 6, 20, 10);
    assertThat(Jobs.of(read.value().orElseThrow(), names).number("starter_run")).hasValue(20.0);
    assertThat(Jobs.of(names).number("starter_run")).hasValue(40.0);
  }

  @Test
  void a_company_adds_a_rule_of_its_own() {
    Read<Rulebook> read = Rulebook.standard()
        .overriddenBy(
            "name,per,kind,formula,unit,label\ngutter_pieces,job,rule,\"=ROUNDUP(eave_length/10,0)\",piece,Gutter\n",
            "company.csv");
    assertThat(read.findings()).isEmpty();
    Names names = Jobs.plane(Names.none(), "A", 6, 21, 10);
    assertThat(Jobs.of(read.value().orElseThrow(), names).number("gutter_pieces"))
        .hasValue(3.0);
  }

  /** On one plane as on two: a column of a single row is still a column. */
  @Test
  void a_condition_on_planes_holds_on_a_roof_of_one_plane() {
    Rulebook book = Rulebook.standard()
        .overriddenBy(
            "name,per,kind,formula,unit,label\nsteep_area,job,rule,\"SUMIFS(net_sloped_area,pitch_rise,\"\">=6\"\")\",sq ft sloped,Steep\n",
            "company.csv")
        .value()
        .orElseThrow();
    Names one = Jobs.plane(Names.none(), "A", 6, 20, 10);
    assertThat(Jobs.of(book, one).number("steep_area")).hasValue(200.0);
    Names two = Jobs.plane(one, "B", 5, 20, 10);
    assertThat(Jobs.of(book, two).number("steep_area")).hasValue(200.0);
  }

  @Test
  void a_rule_that_cannot_be_used_is_said_and_one_that_cannot_be_read_leaves_the_standard_one() {
    Read<Rulebook> read =
        Jobs.company("cap_run,ridge_lenght+hip_length\nstarter_run,eave_length+(\n");
    assertThat(read.findings())
        .extracting(finding -> finding.info().id())
        .containsExactly("rule-overridden", "formula-not-read", "rule-name-unknown");
    assertThat(read.findings().get(2).says())
        .isEqualTo(
            "no quantity 'ridge_lenght' for the rule cap_run; nearest: 'ridge_length', 'edge_length', 'rake_length'");
    assertThat(read.value().orElseThrow().rule("starter_run"))
        .isEqualTo(Rulebook.standard().rule("starter_run"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
      starter_run,eave_length+net_area        | the rule starter_run has eave_length+net_area in it: cannot add length and sloped area: eave_length is ft, net_area is sq ft sloped
      shingle_bundles,"ROUNDUP(gross_area,0)"   | the rule shingle_bundles must come to bundle, but ROUNDUP(gross_area,0) comes to sq ft sloped
      order_squares,net_squares/100           | the rule order_squares has net_squares/100 in it: net_squares is square already, and a square is 100 sq ft: divided by 100 once more it is nothing anybody orders
      roof_area,SUM(plan_area)                | the rule roof_area must come to sq ft sloped, but SUM(plan_area) comes to sq ft plan
      cap_pieces,cap_run/cap_exposure         | the rule cap_pieces has cap_run/cap_exposure in it: cannot divide ft by in: cap_run is ft, cap_exposure is in; turn ft into in first
      bundle_load,tear_off_squares*shingle_pack_weight | the rule bundle_load has tear_off_squares*shingle_pack_weight in it: cannot multiply square by lb/bundle: tear_off_squares is square, shingle_pack_weight is lb/bundle, and what comes out is square·lb/bundle
      """)
  void a_company_rule_whose_units_do_not_agree_is_said_with_both_sides(
      String line, String sentence) {
    Read<Rulebook> read = Jobs.company(line + "\n");
    assertThat(read.findings())
        .filteredOn(finding -> finding.info().id().equals("rule-unit-off"))
        .extracting(finding -> finding.where() + ": " + finding.says())
        .containsExactly("company.csv, line 2, formula: " + sentence);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "starter_run,eave_length*1.02",
        "cap_pieces,cap_run*12/cap_exposure",
        "vent_area,attic_area*144/150",
        "shingle_bundles,\"ROUNDUP(gross_area/100*3,0)\"",
        "shingle_bundles,\"ROUNDUP(gross_area/33.3,0)\"",
        "net_squares,net_area/100",
        "waste_rate,12/100",
        "order_squares,\"ROUNDUP(gross_area/100/2,0)*2\"",
        "box_vent_pieces,\"ROUNDUP(exhaust_area/box_vent_net_free_area,0)\""
      })
  void constants_with_a_known_meaning_and_rates_of_ones_own_stay_silent(String line) {
    assertThat(Jobs.company(line + "\n").findings())
        .noneMatch(finding -> finding.info().id().equals("rule-unit-off"));
  }

  @Test
  void rules_in_a_circle_are_named() {
    assertThat(Jobs.company("net_area,gross_area/(1+waste_rate)\n").findings())
        .extracting(Finding::says)
        .contains(
            "rules must not ask for each other in a circle, but these do: net_area asks for gross_area asks for net_area");
  }

  @Test
  void a_row_that_is_no_rule_is_said_in_a_sentence() {
    Read<Rulebook> read = Rulebook.standard().overriddenBy("""
        name,per,formula,unit,orders
        Bundles,job,1,bundle,
        my_rule,roof,1,bundle,
        my_other,job,1,wheelbarrows,
        my_third,job,1,bundle,tiles
        my_fourth,corner,1,bundle,
        """, "company.csv");
    assertThat(says(read))
        .containsExactly(
            "company.csv, line 2: a rule's name must be two or more lower-case words joined by underscores, like shingle_bundles, but is 'Bundles'",
            "company.csv, line 3, per: per must be job, plane or edge, but reads 'roof'",
            "company.csv, line 4, unit: unit must read like ft, sq ft, square, bundle or $/bundle, but reads 'wheelbarrows'",
            "company.csv, line 5: orders must name the role of a product, but names 'tiles'",
            "company.csv, line 6: my_fourth is worked out, so it must be per job, plane or edge, but is per corner");
  }

  @Test
  void a_setting_that_is_no_choice_is_said() {
    Names names = Jobs.plane(Names.none(), "A", 6, 20, 10)
        .with("waste_choice", "guess")
        .with("typed_waste", "ten");
    assertThat(says(Takeoff.of(Rulebook.standard(), names, Jobs.PRODUCTS)))
        .contains(
            "job: waste_choice: waste_choice (Where the waste rate comes from) must be typed or shape or simulated, but is 'guess'",
            "job: typed_waste: typed_waste (Waste rate typed by the estimator) must be a number in ratio, but is 'ten'");
  }

  @Test
  void the_waste_rate_is_typed_by_shape_or_simulated() {
    Names names = Jobs.edge(Jobs.plane(Names.none(), "A", 6, 40, 25), "A", "hip", 32)
        .withSimulatedWaste(Ratio.of(0.0731));
    assertThat(Jobs.number(names, "waste_rate")).isEqualTo(0.1);
    assertThat(Jobs.number(names.with("waste_choice", "simulated"), "waste_rate"))
        .isEqualTo(0.0731);
    // 5 % and two bundles of 22 x 39.375 x 5.625 / 144 sq ft on 1000 sq ft: MF-075, by hand
    assertThat(Jobs.number(names.with("waste_choice", "shape"), "waste_rate"))
        .isCloseTo(0.05 + 2 * 22 * 39.375 * 5.625 / 144 / 1000, within(1e-12));
  }

  @Test
  void a_quantity_without_its_product_is_said_and_the_rest_goes_on() {
    Names names = Jobs.plane(Names.none(), "A", 6, 20, 10);
    Selection few =
        new Selection(Map.of(Role.SHINGLE, Jobs.PRODUCTS.of(Role.SHINGLE).orElseThrow()));
    Read<Takeoff> read = Takeoff.of(Rulebook.standard(), names, few);
    assertThat(read.value().orElseThrow().orders())
        .extracting(order -> order.packs().toString())
        .containsExactly("7 bundles");
    assertThat(says(read))
        .contains(
            "job: cap_bundles: cap_bundles (Hip-and-ridge cap) could not be worked out and is not "
                + "ordered: cap_exposure (Cap: exposure) is not given");
  }

  @Test
  void the_lines_are_those_of_the_trade() {
    // 7 3/4 - 3/4 = 7, 13 1/4 - 3/4 = 12 1/2, 5 x 5 5/8 = 28 1/8 rounded down to 28, 28 / 5 = 5.6:
    // common practice, by hand
    Takeoff takeoff = Jobs.of(Jobs.plane(Names.none(), "A", 6, 20, 10));
    assertThat(Stream.of(
                "starter_line",
                "first_course_line",
                "line_spacing",
                "line_interval",
                "mark_one",
                "mark_two",
                "mark_six",
                "lined_exposure")
            .map(name -> takeoff.number(name).orElseThrow()))
        .containsExactly(7.0, 12.5, 28.125, 28.0, 28.0, 56.0, 168.0, 5.6);
  }

  @Test
  void a_quantity_explains_itself() {
    Takeoff takeoff = Jobs.of(Jobs.plane(Names.none(), "A", 6, 20, 10));
    assertThat(takeoff.worked("shingle_bundles").show()).isEqualTo("""
        Shingles: 7 bundle
          shingle_bundles = ROUNDUP(gross_area/bundle_cover*(1-1E-9),0)
          gross_area = 220 sq ft sloped (job: gross_area)
          bundle_cover = 33.83789 sq ft/bundle (job: bundle_cover)
          rounded up to a whole number, once; a need within 1e-9 of a whole number is that number
          source: arithmetic""");
    assertThat(takeoff.worked("net_area").show()).isEqualTo("""
        Net area: what takes shingles, openings out: 200 sq ft sloped
          net_area = SUM(shingled_area)
          shingled_area = 200 sq ft sloped (all planes: shingled_area)
          source: arithmetic""");
  }
}
