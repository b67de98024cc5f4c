package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Workbook;

/** The demo workbook, spoilt by one slip at a time: the right cell is named, once, and the totals are withheld. */
class SpoiltJobTest {

  /**
   * A slip on the demo workbook.
   *
   * @param name what it is
   * @param spoil makes it and says where the finding must stand
   * @param checks the checks that may say it
   */
  private record Slip(String name, Function<DemoWorkbook, Address> spoil, Set<String> checks) {}

  /** A line of work in the estimate of the demo house. */
  private static final int WORK = 19;

  private static Slip slip(String name, Function<DemoWorkbook, Address> spoil, String... checks) {
    return new Slip(name, spoil, Set.of(checks));
  }

  private static Address type(DemoWorkbook book, Address at, double value) {
    book.type(at, value);
    return at;
  }

  private static Address edit(DemoWorkbook book, Address at, String from, String to) {
    String formula = book.formula(at);
    assertThat(formula).contains(from);
    book.enter(at, formula.replace(from, to));
    return at;
  }

  private static final List<Slip> SLIPS = List.of(
      slip(
          "MEC-01 typed over an area",
          it -> type(it, it.at("net_sloped_area", 1), 480),
          "typed-over-formula",
          "rule-typed-over"),
      slip(
          "MEC-01 typed over the bundles",
          it -> type(it, it.at("shingle_bundles", 0), 40),
          "rule-typed-over"),
      slip(
          "MEC-03 cleared in one row",
          it -> {
            Address at = it.at("net_sloped_area", 1);
            it.type(at, new Content.Blank());
            return at;
          },
          "formula-cleared-in-row",
          "rule-typed-over"),
      slip(
          "FRM-01 total stops short",
          it -> {
            Address at = it.totalOf("net_sloped_area");
            String formula = it.formula(at);
            int last = Integer.parseInt(formula.replaceAll(".*:[A-Z]+(\\d+)\\)", "$1"));
            it.enter(at, formula.replace(last + ")", (last - 2) + ")"));
            return at;
          },
          "total-stops-short",
          "known-slip-in-rule"),
      slip(
          "FRM-05 one row off",
          it -> {
            Address at = it.at("plane_squares", 1);
            int row = at.ref().row() + 1;
            return edit(it, at, String.valueOf(row), String.valueOf(row - 1));
          },
          "reference-off-by-one",
          "known-slip-in-rule"),
      slip(
          "FRM-08 deleted cells",
          it -> {
            Address at = it.at("cap_run", 0);
            return edit(it, at, "ridge_length", "#REF!");
          },
          "broken-reference"),
      slip(
          "FRM-12 brackets lost",
          it ->
              edit(it, it.at("gross_area", 0), "net_area*(1+waste_rate)", "net_area*1+waste_rate"),
          "known-slip-in-rule",
          "waste-added-as-amount"),
      slip(
          "FRM-15 rounded down",
          it -> edit(it, it.at("shingle_bundles", 0), "ROUNDUP", "ROUNDDOWN"),
          "known-slip-in-rule",
          "packs-rounded-down"),
      slip(
          "FRM-17 circular",
          it -> {
            Address at = it.at("gross_area", 0);
            it.enter(at, "gross_area*(1+waste_rate)");
            return at;
          },
          "circular-formula"),
      slip(
          "LOG-03 factor twice",
          it -> edit(it, it.at("plan_area", 1), "/", "/SQRT(1.25)/"),
          "known-slip-in-rule"),
      slip(
          "LOG-04 waste twice",
          it -> edit(
              it,
              it.at("gross_area", 0),
              "net_area*(1+waste_rate)",
              "net_area*(1+waste_rate)*(1+waste_rate)"),
          "known-slip-in-rule"),
      slip(
          "LOG-12 waste taken off",
          it -> edit(it, it.at("gross_area", 0), "1+waste_rate", "1-waste_rate"),
          "known-slip-in-rule"),
      slip(
          "LOG-14 linear factor",
          it -> {
            Address at = it.at("pitch_factor", 1);
            it.enter(at, "1+" + it.formula(at).replaceAll(".*(\\$[A-Z]+\\d+)/12.*", "$1") + "/12");
            return at;
          },
          "known-slip-in-rule",
          "pitch-factor-off"),
      slip(
          "DOM-07 cap forgets hips",
          it -> edit(it, it.at("cap_run", 0), "+hip_length", ""),
          "known-slip-in-rule"),
      slip(
          "DAT-01 pitch as a date",
          it -> {
            Address at = it.at("pitch_rise", 1);
            it.typeDate(at, 46185);
            return at;
          },
          "pitch-became-date"),
      slip(
          "UNI-16 waste of 10", it -> type(it, it.at("typed_waste", 0), 10), "setting-not-allowed"),
      slip(
          "UNI-16 tax of 7.25", it -> type(it, it.at("tax_rate", 0), 7.25), "tax-typed-as-percent"),
      slip(
          "ACC-02 labour taxed",
          it -> {
            Address at = it.at("estimate_tax", 0);
            it.enter(at, "ROUND(estimate_price*tax_rate,2)");
            return at;
          },
          "estimate-cell-off"),
      slip(
          "discount over the price",
          it -> {
            it.type(it.at("discount_amount", 0), 1_000_000);
            return it.at("estimate_total", 0);
          },
          "discount-over-price"),
      slip(
          "ACC-05 total typed",
          it -> type(it, it.at("estimate_total", 0), 9000),
          "estimate-does-not-foot"));

  /** What may have been changed on purpose: named and priced, and the totals are given. */
  private static final List<Slip> DOUBTS = List.of(
      slip(
          "a line looks up another product's price",
          it -> {
            Address at = it.at("line_price", 3);
            it.enter(at, it.formula(at).replaceAll("[a-z_]+_product", "shingle_product"));
            return at;
          },
          "line-off-model"),
      slip(
          "a line of work reads another rate",
          it -> {
            Address at = it.at("line_quantity", WORK);
            it.enter(at, it.formula(it.at("line_quantity", WORK - 1)));
            return at;
          },
          "line-off-model"),
      slip(
          "packs are not whole",
          it -> {
            Address at = it.at("line_quantity", 0);
            it.enter(at, "gross_area/32.5");
            return at;
          },
          "line-off-model"),
      slip(
          "a category is typed",
          it -> {
            Address at = it.at("line_category", WORK);
            it.type(at, new Content.Text("material"));
            return at;
          },
          "line-off-model"));

  @TestFactory
  List<DynamicTest> a_line_that_may_be_meant_otherwise_is_named_and_priced() {
    return DOUBTS.stream()
        .map(slip -> DynamicTest.dynamicTest(slip.name(), () -> {
          DemoWorkbook book = new DemoWorkbook();
          Address at = slip.spoil().apply(book);
          Verdict verdict = verdict(book.saved());
          assertThat(said(verdict))
              .anyMatch(finding -> slip.checks().contains(finding.info().id())
                  && isAt(finding, at)
                  && finding.worth().contains("USD"));
          assertThat(verdict.total()).isPresent();
        }))
        .collect(Collectors.toList());
  }

  @Test
  void a_price_looked_up_elsewhere_is_the_only_finding_and_worth_something() {
    DemoWorkbook book = new DemoWorkbook();
    Address at = book.at("line_price", 3);
    book.enter(at, book.formula(at).replaceAll("[a-z_]+_product", "shingle_product"));
    assertThat(said(verdict(book.saved())))
        .singleElement()
        .satisfies(finding -> assertThat(finding.worth()).contains("Total: ", " USD too much"));
  }

  @Test
  void overhead_of_twelve_is_doubted_and_of_twelve_percent_is_not() {
    DemoWorkbook book = new DemoWorkbook();
    Address at = type(book, book.at("overhead_rate", 0), 12);
    assertThat(said(verdict(book.saved())))
        .anyMatch(
            finding -> finding.info().id().equals("rate-typed-as-percent") && isAt(finding, at));
    type(book, at, 0.12);
    assertThat(said(verdict(book.saved()))).isEmpty();
  }

  @Test
  void a_line_that_the_model_lacks_is_no_finding() {
    DemoWorkbook book = new DemoWorkbook();
    Address own = book.at("line_item", WORK);
    book.type(own, new Content.Text("own crane"));
    book.enter(book.at("line_quantity", WORK), "1+1");
    assertThat(said(verdict(book.saved())))
        .noneMatch(finding -> finding.info().id().equals("line-off-model"));
  }

  private static Verdict verdict(Workbook workbook) {
    return Verify.of(workbook, "demo.xlsx");
  }

  private static List<Finding> said(Verdict verdict) {
    return verdict.findings().stream()
        .filter(finding -> finding.info().severity() != Severity.NOTE)
        .toList();
  }

  @Test
  void a_clean_workbook_gives_none_and_carries_totals() {
    Verdict verdict = verdict(new DemoWorkbook().saved());
    assertThat(said(verdict)).isEmpty();
    assertThat(verdict.total()).isPresent();
    assertThat(verdict.moneyPath().isWhole()).isTrue();
  }

  @TestFactory
  List<DynamicTest> a_slip_is_named_at_its_cell_and_withholds_the_totals() {
    return SLIPS.stream()
        .map(slip -> DynamicTest.dynamicTest(slip.name(), () -> {
          DemoWorkbook book = new DemoWorkbook();
          Address at = slip.spoil().apply(book);
          Verdict verdict = verdict(book.saved());
          assertThat(said(verdict))
              .as(slip.name())
              .anyMatch(
                  finding -> slip.checks().contains(finding.info().id()) && isAt(finding, at));
          assertThat(verdict.isPassed()).isFalse();
          assertThat(verdict.total()).isEmpty();
          assertThat(Totals.of(List.of(verdict)).withheldCsv()).contains("demo.xlsx");
        }))
        .collect(Collectors.toList());
  }

  private static boolean isAt(Finding finding, Address at) {
    return finding.where() instanceof Where.InCell in && in.cell().equals(at);
  }

  @Test
  void old_values_are_said_where_an_input_was_changed() {
    DemoWorkbook book = new DemoWorkbook();
    book.type(book.at("typed_waste", 0), 0.2);
    assertThat(said(verdict(book.stale())))
        .isNotEmpty()
        .allMatch(finding -> finding.info().id().equals("stale-value"));
  }

  @Test
  void half_a_cent_that_another_program_spells_otherwise_is_no_finding() {
    DemoWorkbook book = new DemoWorkbook();
    book.type(book.at("line_quantity", 1), Math.nextDown(0.125));
    book.type(book.at("line_price", 1), 1.0);
    book.type(book.at("line_amount", 1), 0.13);
    assertThat(said(verdict(book.saved())))
        .noneMatch(finding -> finding.info().id().equals("line-amount-off"));
    book.type(book.at("line_amount", 1), 0.14);
    assertThat(said(verdict(book.saved())))
        .anyMatch(finding -> finding.isError() && isAt(finding, book.at("line_amount", 1)));
  }

  @Test
  void what_a_typed_area_is_worth_is_said_in_packs_and_money() {
    DemoWorkbook book = new DemoWorkbook();
    book.type(book.at("net_sloped_area", 1), 480);
    assertThat(said(verdict(book.saved())))
        .singleElement()
        .satisfies(finding -> assertThat(finding.worth()).contains("bundles too little"));
  }

  @Test
  void totals_foot_and_keep_failed_workbooks_apart() {
    DemoWorkbook spoilt = new DemoWorkbook();
    spoilt.type(spoilt.at("shingle_bundles", 0), 40);
    Totals totals =
        Totals.of(List.of(verdict(new DemoWorkbook().saved()), verdict(spoilt.saved())));
    assertThat(totals.jobs()).hasSize(1);
    assertThat(totals.withheld()).hasSize(1);
    JobTotal job = totals.jobs().get(0);
    var byCategory =
        job.byCategory().values().stream().reduce(squaresheet.units.Money::plus).orElseThrow();
    var byCode =
        job.byCostCode().values().stream().reduce(squaresheet.units.Money::plus).orElseThrow();
    assertThat(byCategory).isEqualTo(job.total());
    assertThat(byCode).isEqualTo(job.total());
    assertThat(totals.csv().lines().findFirst().orElseThrow())
        .startsWith("job,file,currency,material");
  }
}
