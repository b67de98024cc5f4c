package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A number beside "Total" is a price only where its format, its label, its heading or what it adds up says that it is money. */
class MoneyTotalTest {

  private static Verdict verdict(String drawing) {
    return Verify.of(DrawnBook.of(drawing).workbook(), "bid.xlsx");
  }

  private static final Map<String, String> OTHER = Map.of(
      "man-hours",
      """
      sheet: Crew
      1 | Task | Hours
      2 | Tear off | 20.5
      3 | Lay | 46.38
      4 |
      5 | Total | =SUM(B2:B3)
      """,
      "hours, said in the label only",
      """
      1 | Task | Lay
      2 | Total hours | 66.88
      """,
      "squares",
      """
      1 | Roof | Squares
      2 | House | 199.9
      3 | Barn | 60
      4 |
      5 | Grand total | =B2+B3
      """,
      "plan feet",
      """
      1 | Side | Plan ft
      2 | North | 1264
      3 | South | 1264
      4 |
      5 | Total | =SUM(B2:B3) {#,##0.00}
      """,
      "a unit in the format",
      """
      1 | Eaves | 120 {0.0" ft"}
      2 | Rakes | 80 {0.0" ft"}
      3 | Total | =B1+B2
      """,
      "a unit behind it",
      """
      1 | Job | Mill
      2 | Total | 66.88 | hr
      """,
      "a total of hours over steps",
      """
      1 | Task | Hours
      2 | Lay | 46
      3 | Clean | 4
      4 |
      5 | Subtotal | =SUM(B2:B3)
      6 | Spare | 10%
      7 | Total | =ROUND(B5+B5*B6,2)
      """,
      "nothing said at all",
      """
      1 | Job | Mill
      2 | Total | 2528
      """,
      "rows of no unit",
      """
      1 | Part | Qty
      2 | Front | 12
      3 | Back | 14
      4 |
      5 | Total | =SUM(B2:B3)
      """);

  @TestFactory
  Stream<DynamicTest> what_is_no_money_for_sure_is_withheld_with_a_sentence() {
    return OTHER.entrySet().stream()
        .map(each -> DynamicTest.dynamicTest(each.getKey(), () -> {
          Totals totals = Totals.of(List.of(verdict(each.getValue())));
          assertThat(totals.jobs()).isEmpty();
          assertThat(totals.withheldCsv()).contains("no-totals-found");
        }));
  }

  private static final Map<String, String> MONEY = Map.of(
      "its format",
      """
      1 | Job | Mill
      2 | Total | 2528 {$#,##0.00}
      """,
      "an accounting format",
      """
      1 | Job | Mill
      2 | Total | 2528 {_-[$£-809]* #,##0.00_-}
      """,
      "its label",
      """
      1 | Job | Mill
      2 | Total price | 2528
      """,
      "its heading",
      """
      1 | Line | Amount
      2 | Shingles | 2000
      3 | Work | 528
      4 |
      5 | Sum | =SUM(B2:B3)
      8 | Total | =B5
      """,
      "what it is worked out from, over steps and sheets",
      """
      sheet: Work
      1 | Task | Hours | Cost per hour | Line
      2 | Lay | 46 | 50 | =B2*C2
      3 | Clean | 4 | 57 | =B3*C3
      4 |
      5 | Subtotal | | | =D2+D3
      sheet: Sheet1
      1 | Job | Mill
      2 | Spare | 0%
      3 | Total | =ROUND(Work!D5*(1+B2),2)
      """);

  @TestFactory
  Stream<DynamicTest> what_is_money_is_given() {
    return MONEY.entrySet().stream()
        .map(each -> DynamicTest.dynamicTest(each.getKey(), () -> {
          Verdict verdict = verdict(each.getValue());
          assertThat(verdict.total()).as(verdict.reasons().toString()).isPresent();
          assertThat(verdict.total().orElseThrow().total().amount().toPlainString())
              .isEqualTo("2528.00");
        }));
  }

  @Test
  void the_sentence_names_the_cell_and_what_speaks_against_it() {
    assertThat(Totals.of(List.of(verdict(OTHER.get("man-hours")))).withheldCsv().lines())
        .containsExactly(
            "file,place,check,why",
            "bid.xlsx,\"bid.xlsx, Crew!B5\",no-totals-found,\"may be the price, but that is not sure, so no total is given:"
                + " label 'Total' stands beside it; by its format, by what is written about it or by what it adds up it"
                + " is no money; bind asks which cell is the price, and keeps the answer\"");
  }

  @Test
  void of_a_total_of_hours_and_one_of_money_the_money_is_the_price() {
    Verdict verdict = verdict("""
        sheet: Crew
        1 | Task | Hours
        2 | Lay | 66.88
        3 |
        4 | Total | =SUM(B2:B2)
        sheet: Quote
        1 | Line | Amount
        2 | Shingles | 2000
        3 | Work | =Crew!B4*55
        4 |
        5 | Sum | =SUM(B2:B3)
        8 | Total | =B5
        """);
    assertThat(verdict.total().orElseThrow().total().amount().toPlainString()).isEqualTo("5678.40");
  }

  @Test
  void a_total_of_hours_beside_labour_is_no_amount_of_labour() {
    Verdict verdict = verdict("""
        1 | Materials | 2000
        2 | Labor hours | 66
        3 | Labor | =B2*1
        4 | Price | =B1+B3*55 {$0.00}
        """);
    assertThat(verdict.total().orElseThrow().byCategory().toString())
        .isEqualTo("{material=USD 2000.00}");
  }

  @Test
  void a_list_with_labour_and_a_container_is_not_all_material() {
    String list = """
        sheet: Offer
        1 | Item | Qty | Unit | Unit price | Amount
        2 | Shingles | 30 | bundle | 40 | =B2*D2
        3 | Nails | 2 | box | 50 | =B3*D3
        4 | Labor | 20 | hour | 55 | =B4*D4
        5 | Container 20 yd | 1 | each | 420 | =B5*D5
        6 |
        9 | Grand total | =SUM(E2:E5) {$#,##0.00}
        """;
    for (String title : new String[] {"Offer", "Materials"}) {
      JobTotal job = verdict(list.replace("Offer", title)).total().orElseThrow();
      assertThat(job.total().toString()).isEqualTo("USD 2820.00");
      assertThat(job.byCategory()).isEmpty();
      assertThat(job.byOwnCategory()).containsOnlyKeys(JobTotal.NOT_SPLIT);
    }
  }

  @Test
  void a_list_that_says_it_is_of_material_is() {
    JobTotal job = verdict("""
            sheet: Materials
            1 | Item | Qty | Unit | Unit price | Amount
            2 | Shingles | 30 | bundle | 40 | =B2*D2
            3 | Nails | 2 | box | 50 | =B3*D3
            4 |
            9 | Grand total | =SUM(E2:E3) {$#,##0.00}
            """).total().orElseThrow();
    assertThat(job.byCategory().toString()).isEqualTo("{material=USD 1300.00}");
  }
}
