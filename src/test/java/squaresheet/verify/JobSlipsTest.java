package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;

/** One slip in the demo workbook is told once, at the cell that was changed; an honest change beside it is not told. */
class JobSlipsTest {

  /**
   * A change to the demo workbook.
   *
   * @param name what it is
   * @param make makes it and says where
   * @param said the only finding above a note, {@code check-id at Sheet!A1}; empty where there is none
   */
  private record Change(String name, Function<DemoWorkbook, Address> make, String said) {}

  private static Change change(String name, Function<DemoWorkbook, Address> make, String check) {
    return new Change(name, make, check);
  }

  private static Address type(DemoWorkbook book, Address at, String text) {
    book.type(
        at,
        text.isEmpty()
            ? new Content.Blank()
            : text.matches("-?\\d+(\\.\\d+)?")
                ? new Content.Numeric(Double.parseDouble(text))
                : new Content.Text(text));
    return at;
  }

  private static Address enter(DemoWorkbook book, Address at, String formula) {
    book.enter(at, formula);
    return at;
  }

  private static Address edit(DemoWorkbook book, Address at, String from, String to) {
    assertThat(book.formula(at)).contains(from);
    return enter(book, at, book.formula(at).replace(from, to));
  }

  /** The cell of the first sheet that repeats a named value. */
  private static Address summary(DemoWorkbook book, String formula) {
    return Stream.iterate(5, row -> row < 60, row -> row + 1)
        .map(row -> new Address("Summary", new Ref(row, 1)))
        .filter(at -> book.formula(at).equals(formula))
        .findFirst()
        .orElseThrow(() -> new AssertionError(formula));
  }

  private static Address above(DemoWorkbook book, String name, int rows) {
    Address total = book.at(name, 0);
    return new Address(total.sheet(), total.ref().plus(-rows, 0));
  }

  private static final int BACK = 1;

  private static final List<Change> INPUTS = List.of(
      change(
          "a negative eave",
          it -> type(it, it.at("eave_width", BACK), "-31"),
          "length-not-positive"),
      change(
          "an eave that is a word",
          it -> type(it, it.at("eave_width", BACK), "x"),
          "length-unreadable"),
      change("an eave left out", it -> type(it, it.at("eave_width", BACK), ""), "length-missing"),
      change(
          "a height of nothing",
          it -> type(it, it.at("plane_up_slope", BACK), "0"),
          "length-not-positive"),
      change(
          "a negative pitch",
          it -> type(it, it.at("pitch_rise", BACK), "-6"),
          "pitch-not-positive"),
      change(
          "a shape that is none",
          it -> type(it, it.at("plane_shape", BACK), "hexagon"),
          "word-not-known"),
      change(
          "a plane without its name",
          it -> type(it, it.at("plane_name", BACK), ""),
          "plane-not-understood"),
      change(
          "two planes of one name",
          it -> type(it, it.at("plane_name", BACK), "Front"),
          "plane-named-twice"),
      change(
          "a plane called otherwise",
          it -> type(it, it.at("plane_name", BACK), "Bakc"),
          "plane-called-otherwise"),
      change(
          "an opening in no plane",
          it -> type(it, it.at("opening_plane", 0), "Bakc"),
          "row-not-read"),
      change(
          "a negative opening",
          it -> type(it, it.at("opening_width", 0), "-3"),
          "length-not-positive"),
      change("an edge of no plane", it -> type(it, it.at("edge_plane", 4), "Bakc"), "row-not-read"),
      change(
          "a negative edge", it -> type(it, it.at("edge_taped", 1), "-5"), "length-not-positive"),
      change(
          "a corner that is a word",
          it -> type(it, it.at("corner_along", 1), "x"),
          "length-unreadable"),
      change(
          "waste that is a word",
          it -> type(it, it.at("typed_waste", 0), "x"),
          "text-in-number-cell"),
      change(
          "an exposure that is a word",
          it -> type(it, it.at("catalogue_exposure_in", 0), "x"),
          "product-not-read"),
      change(
          "a product that is none",
          it -> type(it, it.at("shingle_product", 0), "nothing"),
          "product-unknown"),
      change(
          "a price that is a word",
          it -> type(it, it.at("price_amount", 0), "x"),
          "text-in-number-cell"),
      change(
          "a rate that is a word",
          it -> type(it, it.at("rate_amount", 0), "x"),
          "text-in-number-cell"),
      change(
          "a crew's rate that is a word",
          it -> type(it, it.at("crew_rate", 0), "x"),
          "text-in-number-cell"),
      change(
          "a tax rate that is a word",
          it -> type(it, it.at("tax_rate", 0), "x"),
          "text-in-number-cell"),
      change(
          "a profit rate that is a word",
          it -> type(it, it.at("profit_rate", 0), "x"),
          "text-in-number-cell"),
      change(
          "the price of another pack",
          it -> type(it, it.at("price_per", 0), "ton"),
          "price-unit-off"),
      change(
          "a rate of no quantity",
          it -> type(it, it.at("rate_quantity", 0), "rolls"),
          "rate-missing"),
      change(
          "a currency that is none",
          it -> type(it, it.at("terms_currency", 0), "XQQ"),
          "row-not-read"),
      change(
          "too much discount", it -> type(it, it.at("discount_share", 0), "1.5"), "row-not-read"),
      change(
          "negative overhead",
          it -> type(it, it.at("overhead_rate", 0), "-0.1"),
          "text-in-number-cell"),
      change(
          "profit of another kind",
          it -> type(it, it.at("profit_kind", 0), "profit"),
          "term-not-known"),
      change(
          "a discount at another time",
          it -> type(it, it.at("discount_when", 0), "later"),
          "term-not-known"),
      change("perhaps taxed", it -> type(it, it.at("tax_applies", 0), "maybe"), "term-not-known"),
      change(
          "an eave with its unit",
          it -> type(it, it.at("eave_width", BACK), "44 ft"),
          "input-is-text"));

  private static final List<Change> ESTIMATE = List.of(
      change(
          "the last payment typed",
          it -> type(it, above(it, "payment_total", 1), "3000"),
          "estimate-cell-off"),
      change(
          "a payment typed",
          it -> type(it, above(it, "payment_total", 2), "3000"),
          "estimate-cell-off"),
      change(
          "the costs stop short",
          it -> edit(it, it.at("estimate_cost", 0), "G35", "G33"),
          "estimate-cell-off"),
      change(
          "the costs typed",
          it -> type(it, it.at("estimate_cost", 0), "7000"),
          "estimate-cell-off"),
      change(
          "the price typed",
          it -> type(it, it.at("estimate_price", 0), "9000"),
          "estimate-cell-off"),
      change(
          "overhead forgotten",
          it -> edit(it, it.at("estimate_base", 0), "+$G36", ""),
          "estimate-cell-off"),
      change(
          "another tax rate in the formula",
          it -> edit(it, it.at("tax_by_invoice", 0), "tax_rate", "0.08"),
          "estimate-cell-off"),
      change(
          "tax on a line of labour",
          it -> enter(it, it.at("line_taxed", 19), "$G24"),
          "estimate-cell-off"),
      change(
          "a category's sum typed",
          it -> type(it, above(it, "category_total", 11), "4000"),
          "estimate-cell-off"),
      change(
          "another category's sum",
          it ->
              enter(it, above(it, "category_total", 11), "SUMIFS(line_amount,line_category,$A56)"),
          "estimate-cell-off"),
      change(
          "the shares summed short",
          it -> enter(
              it,
              it.totalOf("payment_share"),
              "SUM(" + it.at("payment_share", 0).ref() + ":"
                  + it.at("payment_share", 1).ref() + ")"),
          "estimate-cell-off"));

  private static final List<Change> SUMMARY = List.of(
      change(
          "the total typed, another",
          it -> type(it, summary(it, "estimate_total"), "9999"),
          "summary-off-sheets"),
      change(
          "bundles typed, the same",
          it -> type(it, summary(it, "shingle_bundles"), "59"),
          "summary-off-sheets"),
      change(
          "the total of another cell",
          it -> enter(it, summary(it, "estimate_total"), "estimate_price"),
          "summary-off-sheets"),
      change(
          "the cap's packs for the starter's, the same today",
          it -> enter(it, summary(it, "starter_bundles"), "cap_bundles"),
          "summary-off-sheets"),
      change(
          "another area",
          it -> enter(it, summary(it, "plan_area_total"), "roof_area"),
          "summary-off-sheets"),
      change(
          "one roll less",
          it -> enter(it, summary(it, "underlayment_rolls"), "underlayment_rolls-1"),
          "summary-off-sheets"),
      change(
          "another pack",
          it -> {
            Address packs = summary(it, "shingle_bundles");
            return type(it, new Address("Summary", packs.ref().plus(0, 1)), "square");
          },
          "summary-off-sheets"));

  /** What people may do to a workbook of their own. */
  private static final List<Change> HONEST = List.of(
      change(
          "another eave, the ridge with it",
          it -> {
            type(it, it.at("eave_width", BACK), "44.5");
            type(it, it.at("edge_taped", 4), "");
            type(it, it.at("corner_along", 5), "44.5");
            return type(it, it.at("corner_along", 4), "44.5");
          },
          ""),
      change(
          "another share for each payment",
          it -> {
            type(it, it.at("payment_share", 0), "0.2");
            return type(it, it.at("payment_share", 2), "0.4");
          },
          ""),
      change("tax on labour by the terms", it -> type(it, it.at("tax_applies", 1), "Yes"), ""),
      change("a discount", it -> type(it, it.at("discount_amount", 0), "150"), ""),
      change(
          "the total of the summary rounded for the customer",
          it -> enter(it, summary(it, "estimate_total"), "ROUND(estimate_total,-1)"),
          ""),
      change(
          "the total of the summary by way of the estimate's cell",
          it -> enter(it, summary(it, "estimate_total"), "Estimate!B52+0"),
          ""),
      change("a row of the summary emptied", it -> type(it, summary(it, "hip_length"), ""), ""),
      change(
          "a product of the summary called otherwise",
          it -> {
            Address packs = summary(it, "shingle_bundles");
            return type(it, new Address("Summary", packs.ref().plus(0, -1)), "Shingles, dark grey");
          },
          ""),
      change(
          "the costs by another formula",
          it -> enter(it, it.at("estimate_cost", 0), "SUM(G5:G34)+G35"),
          ""));

  private static List<String> said(DemoWorkbook book) {
    return said(verdict(book));
  }

  private static List<String> said(Verdict verdict) {
    return verdict.findings().stream()
        .filter(finding -> finding.info().severity() != Severity.NOTE)
        .map(DrawnChecksTest::at)
        .toList();
  }

  private static Verdict verdict(DemoWorkbook book) {
    return Verify.of(book.saved(), "demo.xlsx");
  }

  @TestFactory
  Stream<DynamicTest> a_slip_is_told_once_at_its_own_cell() {
    return Stream.of(INPUTS, ESTIMATE, SUMMARY)
        .flatMap(List::stream)
        .map(change -> DynamicTest.dynamicTest(change.name(), () -> {
          DemoWorkbook book = new DemoWorkbook();
          Address at = change.make().apply(book);
          Verdict verdict = verdict(book);
          assertThat(said(verdict)).containsExactly(change.said() + " at " + at);
          assertThat(verdict.total()).isEmpty();
        }));
  }

  @TestFactory
  Stream<DynamicTest> an_honest_change_is_not_told() {
    return HONEST.stream()
        .map(change -> DynamicTest.dynamicTest(change.name(), () -> {
          DemoWorkbook book = new DemoWorkbook();
          Address at = change.make().apply(book);
          Verdict verdict = verdict(book);
          assertThat(said(verdict)).as(at.toString()).isEmpty();
          assertThat(verdict.total()).isPresent();
        }));
  }

  @Test
  void a_lost_input_counts_what_follows_from_it_and_says_what_hangs_on_it() {
    DemoWorkbook book = new DemoWorkbook();
    type(book, book.at("eave_width", BACK), "-31");
    Finding told = verdict(book).findings(Severity.ERROR).get(0);
    assertThat(told.says())
        .containsPattern("; \\d\\d more findings follow from it and are not listed");
    assertThat(told.worth()).startsWith("hanging on it: Total, Shingles, ");
  }

  @Test
  void a_second_slip_in_another_plane_is_told_beside_a_lost_input() {
    DemoWorkbook book = new DemoWorkbook();
    type(book, book.at("eave_width", BACK), "-31");
    Address other = type(book, book.at("net_sloped_area", 2), "99");
    assertThat(said(book))
        .contains("length-not-positive at " + book.at("eave_width", BACK))
        .anyMatch(it -> it.endsWith(" at " + other));
  }

  @Test
  void a_wide_chimney_without_a_cricket_stays_a_note_of_the_workbook() {
    Verdict verdict = verdict(new DemoWorkbook());
    assertThat(verdict.findings(Severity.NOTE))
        .extracting(finding -> finding.info().id())
        .contains("limit-in-doubt");
    assertThat(verdict.total()).isPresent();
  }

  @Test
  void shares_that_are_not_whole_are_told_at_their_sum() {
    DemoWorkbook book = new DemoWorkbook();
    type(book, book.at("payment_share", 1), "0.5");
    assertThat(said(book)).containsExactly("row-not-read at " + book.totalOf("payment_share"));
  }

  @Test
  void terms_that_cannot_be_are_told_at_the_wrong_one() {
    DemoWorkbook book = new DemoWorkbook();
    Address discount = type(book, book.at("discount_share", 0), "1.5");
    EstimateCells cells = EstimateCells.of(Book.of("demo.xlsx", book.saved())).orElseThrow();
    assertThat(new TermsNotPossible().examine(cells).map(DrawnChecksTest::at))
        .containsExactly("terms-not-possible at " + discount);
    type(book, discount, "0.05");
    assertThat(new TermsNotPossible()
            .examine(EstimateCells.of(Book.of("demo.xlsx", book.saved())).orElseThrow()))
        .isEmpty();
  }
}
