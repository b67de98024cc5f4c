package squaresheet.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;

/** The lists of a company: nothing in them is passed over in silence. */
class ListReadingTest {

  private static final String PRICES = "product,price,per";
  private static final String RATES = "item,category,quantity,amount,unit,crew";

  private static String file(String... lines) {
    return String.join("\n", lines) + "\n";
  }

  private static List<String> said(Read<?> read) {
    return read.findings().stream().map(ListReadingTest::said).toList();
  }

  private static String said(Finding finding) {
    return finding.where() + ": " + finding.says();
  }

  @Test
  void a_column_that_a_list_does_not_have_is_said() {
    Read<PriceList> prices =
        PriceList.read(file(PRICES + ",kategory,note", "a,1,roll,disposal,"), "prices.csv", "USD");
    Read<Rates> rates = Rates.read(
        file(RATES + ",storeys_from,supplier", "permit,permit,,9,$,,2,"), "rates.csv", "USD");
    Read<Terms> terms = Terms.read(file("name,value,code", "overhead,12%,A"), "terms.csv");
    assertThat(Stream.of(prices, rates, terms).map(Read::value)).allMatch(it -> it.isPresent());
    assertThat(said(prices))
        .containsExactly(
            "prices.csv: no column 'kategory' of the price list, so it is not read; nearest: 'category'");
    assertThat(said(rates))
        .containsExactly(
            "rates.csv: no column 'storeys_from' of the table of rates, so it is not read; nearest:"
                + " 'stories_from', 'stories_below'",
            "rates.csv: no column 'supplier' of the table of rates, so it is not read; nearest: 'quantity'");
    assertThat(said(terms))
        .containsExactly(
            "terms.csv: no column 'code' of the terms, so it is not read; nearest: 'note'");
  }

  @Test
  void the_columns_of_the_demo_lists_are_all_known() {
    assertThat(PriceList.read(
                file(PRICES + ",category,cost_code,effective,source,note", "a,1,roll,,,,,"),
                "p",
                "USD")
            .findings())
        .isEmpty();
    assertThat(Terms.read(file("name,value,cost_code,note", "overhead,12%,A,"), "t")
            .findings())
        .isEmpty();
  }
}
