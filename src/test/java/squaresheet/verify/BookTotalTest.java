package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import squaresheet.xlsx.Xlsx;

/** The amounts of workbooks of foreign layout; every expected amount is added up by hand. */
class BookTotalTest {

  private static final String LINES = """
      sheet: Quote
      1 | Description | Category | Cost code | Qty | Unit price | Amount
      2 | Shingles | Materials | 410 | 30 | 40 | =D2*E2
      3 | Crew | Labor | 510 | 20 | 55 | =D3*E3
      4 | Crane | Hire | 520 | 1 | 300 | =D4*E4
      5 | Total | | | | | =SUM(F2:F4)
      6 |
      """;

  private static Verdict verdict(String drawing) {
    return Verify.of(DrawnBook.of(drawing).workbook(), "bid.xlsx");
  }

  private static JobTotal total(String drawing) {
    Verdict verdict = verdict(drawing);
    assertThat(verdict.total()).as(verdict.findings().toString()).isPresent();
    return verdict.total().orElseThrow();
  }

  private static Map<String, String> amounts(JobTotal job) {
    Map<String, String> all = job.byCategory().entrySet().stream()
        .collect(Collectors.toMap(
            it -> it.getKey().toString(), it -> it.getValue().amount().toPlainString()));
    job.byOwnCategory().forEach((word, money) -> all.put(word, money.amount().toPlainString()));
    return all;
  }

  @Test
  void lines_with_categories_and_codes_of_the_estimators_own_split_the_price() {
    // 1200 and 1100 and 300 make 2600; a tenth on top 2860; 5 % tax on that 143
    JobTotal job = total(LINES + """
        7 | Markup | 10%
        8 | Subtotal | =F5*(1+B7)
        9 | Sales tax rate | 5%
        10 | Sales tax | =B8*B9
        11 | Grand total | =B8+B10
        """);
    assertThat(job.total().toString()).isEqualTo("USD 3003.00");
    assertThat(amounts(job))
        .containsExactlyInAnyOrderEntriesOf(Map.of(
            "material",
            "1200.00",
            "labour",
            "1100.00",
            "Hire",
            "300.00",
            "tax",
            "143.00",
            "not split",
            "260.00"));
    assertThat(job.byCostCode().toString())
        .isEqualTo("{=USD 403.00, 410=USD 1200.00, 510=USD 1100.00, 520=USD 300.00}");
  }

  @Test
  void lines_that_hold_more_than_the_price_are_not_split() {
    JobTotal job = total("""
        sheet: Quote
        1 | Description | Category | Qty | Unit price | Amount
        2 | Shingles, good | Material | 30 | 40 | =C2*D2
        3 | Shingles, better | Material | 30 | 50 | =C3*D3
        4 | Crew | Labour | 20 | 55 | =C4*D4
        5 |
        6 | Sales tax rate | 0%
        7 | Grand total | =E3+E4
        """);
    assertThat(amounts(job)).containsExactlyEntriesOf(Map.of("not split", "2600.00"));
    assertThat(job.byCostCode().toString()).isEqualTo("{=USD 2600.00}");
  }

  @Test
  void without_categories_the_totals_of_material_and_labour_do_and_else_nothing_is_split() {
    String lines = """
        sheet: Quote
        1 | Item | Qty | Unit price | Amount
        2 | Shingles | 31 | 38.5 | =B2*C2
        3 | Nails | 1 | 42.5 | =B3*C3
        4 | Total | | | =SUM(D2:D3)
        5 |
        """;
    assertThat(amounts(total(lines + """
        6 | Materials | =D4
        7 | Labor | 2600
        8 | Grand total | =B6+B7
        """)))
        .containsExactlyInAnyOrderEntriesOf(Map.of("material", "1236.00", "labour", "2600.00"));
    assertThat(amounts(total(lines + "6 | Total price | =1.25*2600\n")))
        .containsExactlyEntriesOf(Map.of("not split", "3250.00"));
  }

  @Test
  void the_sign_in_the_price_says_the_currency() {
    assertThat(total(LINES + "7 | Grand total | =F5*1.25 {#,##0.00 [$€-407]}\n")
            .total()
            .toString())
        .isEqualTo("EUR 3250.00");
  }

  @Test
  void a_workbook_with_an_error_or_without_a_price_gives_no_amounts_and_says_why() {
    Verdict wrong = verdict(LINES + "7 | Grand total | =F5+#REF!\n");
    assertThat(wrong.isPassed()).isFalse();
    assertThat(wrong.total()).isEmpty();
    Totals totals = Totals.of(List.of(verdict(LINES)));
    assertThat(totals.jobs()).isEmpty();
    assertThat(totals.withheldCsv()).contains("no cell that is bound as the price");
  }

  @Test
  void the_demo_layouts_foot_by_category_and_cross_foot_by_code() {
    for (String name : List.of("birch-court.xlsx", "mill-yard.xlsx")) {
      Totals totals = Totals.of(
          List.of(Verify.of(Xlsx.read(Path.of("demo-data", name)).value().orElseThrow(), name)));
      JobTotal job = totals.jobs().get(0);
      var zero = squaresheet.units.Money.zero("USD");
      var all = job.byCategory().values().stream().reduce(zero, squaresheet.units.Money::plus);
      assertThat(job.byOwnCategory().values().stream().reduce(all, squaresheet.units.Money::plus))
          .isEqualTo(job.total());
      assertThat(job.byCostCode().values().stream().reduce(zero, squaresheet.units.Money::plus))
          .isEqualTo(job.total());
      // as LibreOffice stored it: 5960.429… and 19165.786…
      assertThat(job.total().toString())
          .isEqualTo(name.startsWith("birch") ? "USD 5960.43" : "USD 19165.79");
      assertThat(totals.csv()).contains("held against the model", job.checked());
      assertThat(job.checked()).matches("\\d+ of \\d+ formulas");
    }
  }
}
